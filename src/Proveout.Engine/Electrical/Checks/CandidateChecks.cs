using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Makes every check that is worth considering, with what the machine as designed shows.</summary>
internal static class CandidateChecks
{
    private const double SecondsAResistance = 12;
    private const double SecondsAFourWire = 30;

    /// <summary>The candidates of all set-ups, set-up by set-up.</summary>
    public static IReadOnlyList<CandidateCheck> Of(WiringContext context, IReadOnlyList<ElectricalSetUp> setUps, IReadOnlyList<StateNetwork> states) =>
    [
        .. Enumerable.Range(0, setUps.Count)
            .AsParallel()
            .AsOrdered()
            .Select(index => OfSetUp(context, index, setUps[index], states[index]).ToArray())
            .SelectMany(ofSetUp => ofSetUp),
    ];

    private static IEnumerable<CandidateCheck> OfSetUp(WiringContext context, int index, ElectricalSetUp setUp, StateNetwork state)
    {
        var wiring = context.Wiring;
        var places = new ProbePlaces(wiring, setUp.State);
        var pairs = new ProbePairs(wiring, state.Conducts, places.Nodes);
        var bounds = new JunctionBounds(state);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (a, b) in setUp.Operated is { } operated ? pairs.AcrossContactsOf(operated) : pairs.All())
        {
            var mode = IsBond(context, a, b) ? MeterMode.FourWire : MeterMode.Resistance;
            var (low, high) = bounds.Resistance(a, b);
            var points = new ValueList<CheckPoint>([places.PointOf(a), places.PointOf(b)]);
            yield return new CandidateCheck(
                Describe(setUp.Text.Id, mode, points, mode.Shown(low, high), taken),
                index,
                a,
                b,
                mode);
        }
    }

    private static bool IsBond(WiringContext context, int a, int b) =>
        context.ClassOf(a) == NetClass.ProtectiveEarth && context.ClassOf(b) == NetClass.ProtectiveEarth;

    private static Check Describe(string setUp, MeterMode mode, ValueList<CheckPoint> points, ReadingInterval expectation, HashSet<string> taken) => new(
        Identifier(setUp, points, taken),
        mode.Kind,
        setUp,
        $"{points[0]} to {points[1]}",
        $"Red lead on {points[0]}, black lead on {points[1]}.",
        points,
        "Ω",
        expectation,
        "",
        mode == MeterMode.FourWire ? SecondsAFourWire : SecondsAResistance)
    {
        MindsPolarity = mode != MeterMode.FourWire, // so little voltage that no junction conducts
    };

    private static string Identifier(string setUp, ValueList<CheckPoint> points, HashSet<string> taken)
    {
        var plain = $"{setUp}-{Plain(points[0])}-{Plain(points[1])}";
        var unique = plain;
        for (var number = 2; !taken.Add(unique); number++)
            unique = FormattableString.Invariant($"{plain}-{number}");
        return unique;
    }

    private static string Plain(CheckPoint point)
    {
        var name = $"{point.Subject}.{point.Place}{(point.Side.Length > 0 ? "." + point.Side : "")}"
            .Replace("+", "plus", StringComparison.Ordinal)
            .Replace("-", "minus", StringComparison.Ordinal);
        return string.Concat(name.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '.' ? letter : '_'));
    }
}
