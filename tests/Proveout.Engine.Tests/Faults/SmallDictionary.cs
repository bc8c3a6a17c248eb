using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>Fault dictionaries of checks that read 0 when sound and 1 under the faults that they catch.</summary>
internal static class SmallDictionary
{
    public static readonly ReadingInterval Good = new(0, 0.1);
    public static readonly ReadingInterval Bad = new(1, 2);

    /// <summary>A dictionary in which check number c catches the faults of its list; every check costs the same.</summary>
    public static FaultDictionary Of(int faults, params int[][] caughtByCheck) => Of(faults, caughtByCheck, [.. caughtByCheck.Select(_ => 10.0)]);

    public static FaultDictionary Of(int faults, int[][] caughtByCheck, double[] costs)
    {
        var setUp = new SetUp("bench", "On the bench", [], [], 5);
        Check[] checks = [.. caughtByCheck.Select((_, index) => new Check($"c{index}", "resistance", "bench", "", "", [], "Ω", Good, "", costs[index]))];
        Fault[] all = [.. Enumerable.Range(0, faults).Select(index => new Fault($"f{index}", "kind", $"Fault {index}.", [$"place {index}"], Severity.Damage, "", 0.01, ""))];
        FaultResponse[] responses =
        [
            .. Enumerable.Range(0, faults).Select(fault =>
            {
                int[] changed = [.. Enumerable.Range(0, checks.Length).Where(check => caughtByCheck[check].Contains(fault))];
                return new FaultResponse(changed, [.. changed.Select(_ => Bad)]);
            }),
        ];
        return new FaultDictionary([setUp], checks, all, responses);
    }
}
