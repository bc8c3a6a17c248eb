using System.Text.Json;
using MathNet.Numerics.LinearAlgebra;

namespace Proveout.Cli.Tests;

/// <summary>
/// Recomputes checks and faults from the JSON alone, by the description in docs/json.md, with a general-purpose library (Math.NET Numerics):
/// effective resistance from the dense nodal conductance matrix, factored anew for every fault.
/// </summary>
public sealed class RecomputationTests
{
    // A tenth of a volt, the least forward voltage, over a milliampere.
    private const double LeastOhmsOfAJunction = 100;

    private const double Rounding = 1e-9;

    // The lower limit counts insulation as if it lay straight across the port: less than a tenth of the meter's own error.
    private const double Looseness = 1e-3;

    private static readonly Lazy<Task<JsonElement>> Network = new(ReadAsync);

    [Fact]
    public async Task Expectations_of_the_sound_machine_follow_from_the_network()
    {
        var network = await Network.Value;
        var checks = network.GetProperty("candidates").EnumerateArray().Where((_, index) => index % 7 == 0).ToArray();

        var compared = checks.Count(check => Agrees(network, check, check.GetProperty("expected"), []));

        Assert.InRange(compared, 40, checks.Length);
    }

    [Fact]
    public async Task What_checks_show_under_faults_follows_from_the_network_and_the_changes()
    {
        var network = await Network.Value;
        var candidates = network.GetProperty("candidates");
        var cases =
            from fault in network.GetProperty("faults").EnumerateArray().Where((_, index) => index % 5 == 0)
            from changed in fault.GetProperty("checks").EnumerateArray().Take(2)
            select (Check: candidates[changed.GetProperty("check").GetInt32()], Shown: changed, Changes: fault.GetProperty("changes").EnumerateArray().ToArray());

        var compared = cases.Count(item => Agrees(network, item.Check, item.Shown, item.Changes));

        Assert.InRange(compared, 60, int.MaxValue);
    }

    private static async Task<JsonElement> ReadAsync()
    {
        var run = await Run.OfAsync("plan", "pennywort", "--json", "--network", "--greedy");
        return JsonDocument.Parse(run.Output).RootElement.GetProperty("network");
    }

    /// <summary>Compares; false where a junction may take part, which needs more than linear algebra.</summary>
    private static bool Agrees(JsonElement network, JsonElement check, JsonElement shown, JsonElement[] changes)
    {
        var meter = network.GetProperty("meters").EnumerateArray().SingleOrDefault(meter => meter.GetProperty("kind").GetString() == check.GetProperty("meter").GetString());
        var low = Resistance(network, check, changes, "lowOhms");
        if (meter.ValueKind == JsonValueKind.Undefined || low >= LeastOhmsOfAJunction)
            return false;
        var (least, most) = Shown(meter, low, Resistance(network, check, changes, "highOhms"));
        Assert.InRange(Number(shown, "low"), least * (1 - Looseness), least + Rounding);
        Assert.Equal(Number(shown, "high"), most, double.IsFinite(most) ? Rounding * (1 + most) : 0);
        return true;
    }

    private static double Number(JsonElement element, string key) =>
        element.GetProperty(key).ValueKind == JsonValueKind.Null ? double.PositiveInfinity : element.GetProperty(key).GetDouble();

    private static double Resistance(JsonElement network, JsonElement check, JsonElement[] changes, string limit)
    {
        var setUp = check.GetProperty("setUp").GetString();
        var open = network.GetProperty("states").EnumerateArray().Single(state => state.GetProperty("setUp").GetString() == setUp)
            .GetProperty("open").EnumerateArray().Select(element => element.GetInt32()).ToHashSet();
        var ohms = network.GetProperty("elements").EnumerateArray()
            .Select(element => (A: element.GetProperty("a").GetInt32(), B: element.GetProperty("b").GetInt32(), Ohms: OhmsOf(element, open, changes, limit)))
            .Concat(Joined(changes, limit, plugsApart: setUp != "mated"))
            .Where(edge => edge.A != edge.B && double.IsFinite(edge.Ohms))
            .ToArray();
        return Between(ohms, check.GetProperty("red").GetInt32(), check.GetProperty("black").GetInt32());
    }

    private static double OhmsOf(JsonElement element, HashSet<int> open, JsonElement[] changes, string limit)
    {
        var index = element.GetProperty("index").GetInt32();
        var change = changes.FirstOrDefault(change => change.TryGetProperty("element", out var changed) && changed.GetInt32() == index);
        var isOpen = open.Contains(index) || element.GetProperty("kind").GetString() == "junction";
        return (change.ValueKind == JsonValueKind.Undefined ? "" : change.GetProperty("what").GetString()) switch
        {
            "cut" => double.PositiveInfinity,
            _ when isOpen => double.PositiveInfinity,
            "add-in-series" => Number(element, limit) + Number(change, limit),
            "replace" => Number(change, limit),
            _ => Number(element, limit),
        };
    }

    private static IEnumerable<(int A, int B, double Ohms)> Joined(JsonElement[] changes, string limit, bool plugsApart) =>
        from change in changes
        where change.GetProperty("what").GetString() == "join" && !(plugsApart && change.GetProperty("onlyWhileMated").GetBoolean())
        select (change.GetProperty("a").GetInt32(), change.GetProperty("b").GetInt32(), Number(change, limit));

    // Only what hangs together with the red lead is solved, with the black lead as reference.
    private static double Between((int A, int B, double Ohms)[] edges, int red, int black)
    {
        var neighbours = edges.SelectMany(edge => new[] { (edge.A, edge.B), (edge.B, edge.A) }).ToLookup(pair => pair.Item1, pair => pair.Item2);
        var reached = new HashSet<int> { red };
        var queue = new Queue<int>(reached);
        while (queue.TryDequeue(out var node))
            foreach (var next in neighbours[node].Where(reached.Add))
                queue.Enqueue(next);
        if (!reached.Contains(black))
            return double.PositiveInfinity;

        var row = reached.Where(node => node != black).Select((node, index) => (node, index)).ToDictionary(pair => pair.node, pair => pair.index);
        var conductances = Matrix<double>.Build.Dense(row.Count, row.Count);
        foreach (var (a, b, ohms) in edges.Where(edge => reached.Contains(edge.A)))
            foreach (var (one, other) in new[] { (a, b), (b, a) })
                if (row.TryGetValue(one, out var i))
                {
                    conductances[i, i] += 1 / ohms;
                    if (row.TryGetValue(other, out var j))
                        conductances[i, j] -= 1 / ohms;
                }

        return (double)Refined(conductances, [.. edges.Where(edge => reached.Contains(edge.A))], row, row[red])[row[red]];
    }

    // Conductances from 1e-8 to 1e3 siemens leave a factorisation five digits; residuals in decimal arithmetic bring the others back
    // (iterative refinement: Wilkinson, Rounding Errors in Algebraic Processes, 1963).
    private static decimal[] Refined(Matrix<double> conductances, (int A, int B, double Ohms)[] edges, Dictionary<int, int> row, int red)
    {
        var factor = conductances.Cholesky();
        var volts = new decimal[row.Count];
        for (var round = 0; round < 4; round++)
        {
            var residual = new decimal[row.Count];
            residual[red] = 1;
            foreach (var (a, b, ohms) in edges)
            {
                var current = (VoltsAt(a) - VoltsAt(b)) / (decimal)ohms;
                if (row.TryGetValue(a, out var i))
                    residual[i] -= current;
                if (row.TryGetValue(b, out var j))
                    residual[j] += current;
            }

            var correction = factor.Solve(Vector<double>.Build.Dense(row.Count, index => (double)residual[index]));
            for (var index = 0; index < volts.Length; index++)
                volts[index] += (decimal)correction[index];
        }

        return volts;

        decimal VoltsAt(int node) => row.TryGetValue(node, out var index) ? volts[index] : 0;
    }

    private static (double Low, double High) Shown(JsonElement meter, double lowOhms, double highOhms)
    {
        var (low, high) = (lowOhms + meter.GetProperty("leadLowOhms").GetDouble(), highOhms + meter.GetProperty("leadHighOhms").GetDouble());
        var (least, most, bottom) = (double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        foreach (var range in meter.GetProperty("ranges").EnumerateArray())
        {
            var (fullScale, error) = (range.GetProperty("fullScale").GetDouble(), range.GetProperty("relativeError").GetDouble());
            var digits = range.GetProperty("digits").GetDouble() * range.GetProperty("resolution").GetDouble();
            if (high >= bottom && low <= 1.02 * fullScale)
            {
                least = Math.Min(least, Math.Max(0, (Math.Max(low, bottom) * (1 - error)) - digits));
                most = Math.Max(most, (Math.Min(high, 1.02 * fullScale) * (1 + error)) + digits);
            }

            bottom = 0.98 * fullScale;
        }

        return (least, high > bottom ? double.PositiveInfinity : most);
    }
}
