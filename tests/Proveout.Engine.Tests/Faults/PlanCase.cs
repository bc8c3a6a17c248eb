using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;
using Check = Proveout.Engine.Faults.Check;

namespace Proveout.Engine.Tests.Faults;

/// <summary>A small problem of choosing checks: who catches what, in which set-up, for how much, and further demands.</summary>
public sealed record PlanCase(int Faults, int[] CatchMasks, int[] SetUps, int[] CheckSeconds, int[] SetUpSeconds, int[] AlsoCatchMasks)
{
    private const int Checks = 10;
    private const int MostSetUps = 4;

    public static Arbitrary<PlanCase> Any { get; } = (
        from faults in Gen.Choose(1, 12)
        from masks in Gen.Choose(0, (1 << 12) - 1).Zip(Gen.Choose(0, (1 << 12) - 1)).Select(pair => pair.Item1 & pair.Item2).ListOf(Checks)
        from setUps in Gen.Choose(0, MostSetUps - 1).ListOf(Checks)
        from seconds in Gen.Choose(1, 6).ListOf(Checks)
        from setUpSeconds in Gen.Choose(0, 12).ListOf(MostSetUps)
        from rows in Gen.Choose(0, 3)
        from also in Gen.Choose(1, (1 << Checks) - 1).Zip(Gen.Choose(1, (1 << Checks) - 1)).Select(pair => (pair.Item1 & pair.Item2) == 0 ? pair.Item1 : pair.Item1 & pair.Item2).ListOf(rows)
        select new PlanCase(faults, [.. masks.Select(mask => mask & ((1 << faults) - 1))], [.. setUps], [.. seconds], [.. setUpSeconds], [.. also])).ToArbitrary();

    public IReadOnlyList<int[]> AlsoCatch => [.. AlsoCatchMasks.Select(Bits)];

    public FaultDictionary Dictionary()
    {
        SetUp[] setUps = [.. SetUpSeconds.Select((seconds, index) => new SetUp($"s{index}", "", [], [], seconds))];
        Check[] checks =
        [
            .. CatchMasks.Select((_, index) => new Check(
                $"c{index}", "resistance", $"s{SetUps[index]}", "", "", [], "Ω", SmallDictionary.Good, "", CheckSeconds[index])),
        ];
        Fault[] faults = [.. Enumerable.Range(0, Faults).Select(index => new Fault($"f{index}", "kind", "", [$"place {index}"], Severity.Damage, "", 0.01, ""))];
        FaultResponse[] responses =
        [
            .. Enumerable.Range(0, Faults).Select(fault => Enumerable.Range(0, checks.Length).Where(check => (CatchMasks[check] >> fault & 1) == 1).ToArray())
                .Select(caught => new FaultResponse(caught, [.. caught.Select(_ => SmallDictionary.Bad)])),
        ];
        return new FaultDictionary(setUps, checks, faults, responses);
    }

    /// <summary>The least seconds of all subsets of the checks that are allowed, and that catch what these can catch and meet every demand.</summary>
    public double LeastSecondsByExhaustion(Func<int, bool> mayUse)
    {
        var allowed = Enumerable.Range(0, CatchMasks.Length).Where(mayUse).Sum(check => 1 << check);
        var catchable = CaughtBy(allowed);
        return Enumerable.Range(0, 1 << CatchMasks.Length)
            .Where(subset => (subset & ~allowed) == 0 && CaughtBy(subset) == catchable && Array.TrueForAll(AlsoCatchMasks, row => (row & subset) != 0))
            .Min(subset => Seconds(Bits(subset)));
    }

    public double Seconds(IReadOnlyCollection<int> checks) =>
        checks.Sum(check => CheckSeconds[check]) + checks.Select(check => SetUps[check]).Distinct().Sum(setUp => SetUpSeconds[setUp]);

    public bool IsMetBy(IReadOnlyCollection<int> checks, Func<int, bool> mayUse)
    {
        var subset = checks.Sum(check => 1 << check);
        var allowed = Enumerable.Range(0, CatchMasks.Length).Where(mayUse).Sum(check => 1 << check);
        return (subset & ~allowed) == 0 && CaughtBy(subset) == CaughtBy(allowed) && Array.TrueForAll(AlsoCatchMasks, row => (row & subset) != 0);
    }

    private static int[] Bits(int mask) => [.. Enumerable.Range(0, Checks).Where(bit => (mask >> bit & 1) == 1)];

    private int CaughtBy(int subset) => Bits(subset).Aggregate(0, (caught, check) => caught | CatchMasks[check]);
}
