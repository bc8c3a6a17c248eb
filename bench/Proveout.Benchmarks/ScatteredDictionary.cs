using Proveout.Engine.Faults;

namespace Proveout.Benchmarks;

/// <summary>Fault dictionaries of any size without a machine: zones of checks, faults caught within their zone, some of them by checks of many zones.</summary>
/// <remarks>Denser and less regular than those of wiring, so that reduction and search are measured on more than what they were made for.</remarks>
internal static class ScatteredDictionary
{
    private const int ChecksAZone = 150;
    private const int WideEvery = 10;
    private const int WideChecks = 300;

    public static FaultDictionary Of(int faults, int checks, int seed)
    {
        var random = new Random(seed);
        SetUp[] setUps = [new("apart", "", [], [], 60), new("mated", "", [], [], 120)];
        var all = Enumerable.Range(0, checks).Select(index => Check(index, setUps[index % 5 == 0 ? 1 : 0].Id)).ToArray();
        var responses = Enumerable.Range(0, faults).Select(fault => Response(random, fault, checks)).ToArray();
        return new FaultDictionary(setUps, all, [.. Enumerable.Range(0, faults).Select(Fault)], responses);
    }

    private static FaultResponse Response(Random random, int fault, int checks)
    {
        var zone = random.Next(checks / ChecksAZone) * ChecksAZone;
        var near = random.Next(ChecksAZone);
        var caught = new SortedSet<int>();
        for (var turn = random.Next(1, 9); turn > 0; turn--)
            caught.Add(zone + ((near + random.Next(12)) % ChecksAZone));
        if (fault % WideEvery == 0)
            for (var turn = 0; turn < WideChecks; turn++)
                caught.Add(random.Next(checks));
        return new FaultResponse([.. caught], [.. caught.Select(_ => new ReadingInterval(1, 2))]);
    }

    private static Check Check(int index, string setUp) => new(
        $"c{index}",
        "resistance",
        setUp,
        "",
        "",
        [new CheckPoint($"X{index / ChecksAZone}", $"{index % 13}", ""), new CheckPoint($"X{index / ChecksAZone}", $"{20 + (index % 11)}", "")],
        "Ω",
        new ReadingInterval(0, 0.1),
        "",
        index % 7 == 0 ? 30 : 12);

    private static Fault Fault(int index) => new($"f{index}", "kind", "", [], (Severity)(index % 5), "", 0.01, "");
}
