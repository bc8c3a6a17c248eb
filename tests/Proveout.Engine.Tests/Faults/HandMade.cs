using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>Fault dictionaries small enough to work out by hand: every check reads 0 to 0.1 when sound, every symptom 1, every fault has prior odds 1 to 99.</summary>
internal static class HandMade
{
    public static readonly ReadingInterval Open = new(ReadingInterval.OverRange, ReadingInterval.OverRange);
    public static readonly ReadingInterval MaybeOpen = new(1, ReadingInterval.OverRange);
    public static readonly ReadingInterval NotAsItShould = new(0, 0);
    public static readonly ReadingInterval Either = new(0, 1);

    private static readonly ReadingInterval Good = new(0, 0.1);
    private static readonly ReadingInterval AsItShould = new(1, 1);

    /// <summary>A dictionary of checks c0, c1, … and symptoms s0, s1, …; each fault lists what it lets the checks that it changes show.</summary>
    public static FaultDictionary Of(int checks, int symptoms, params Dictionary<string, ReadingInterval>[] faults)
    {
        Check[] all =
        [
            .. Enumerable.Range(0, checks).Select(index => CheckOf($"c{index}", "resistance", "Ω", Good, 10)),
            .. Enumerable.Range(0, symptoms).Select(index => CheckOf($"s{index}", Symptom.Kind, "", AsItShould, 5)),
        ];
        return new FaultDictionary(
            [new SetUp("bench", "On the bench", [], [], 5), new SetUp("apart", "All plugs apart", [], [], 120)],
            all,
            [.. faults.Select((_, index) => new Fault($"f{index}", "kind", $"Fault {index}.", [$"place {index}"], Severity.Damage, "", 0.01, ""))],
            [.. faults.Select(fault => ResponseOf(all, fault))]);
    }

    private static Check CheckOf(string id, string kind, string unit, ReadingInterval expectation, double seconds) =>
        new(id, kind, "bench", id, "", [new(id, "a", ""), new("common", "b", "")], unit, expectation, "", seconds);

    private static FaultResponse ResponseOf(Check[] checks, Dictionary<string, ReadingInterval> fault)
    {
        int[] changed = [.. Enumerable.Range(0, checks.Length).Where(check => fault.ContainsKey(checks[check].Id))];
        return new FaultResponse(changed, [.. changed.Select(check => fault[checks[check].Id])]);
    }
}
