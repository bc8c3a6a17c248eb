using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;
using Check = Proveout.Engine.Faults.Check;

namespace Proveout.Engine.Tests.Faults;

/// <summary>Some checks between a few places, in up to two set-ups, of up to two kinds and three severities.</summary>
public sealed record OrderCase(OrderedCheck[] Checks)
{
    public static Arbitrary<OrderCase> OfAtMost(int most) => (
        from count in Gen.Choose(1, most)
        from checks in (
            from red in Gen.Choose(0, 3)
            from black in Gen.Choose(4, 6)
            from turned in Gen.Elements(true, false)
            from minds in Gen.Elements(true, false)
            from kind in Gen.Frequency((4, Gen.Constant(0)), (1, Gen.Constant(1)))
            from setUp in Gen.Frequency((3, Gen.Constant(0)), (1, Gen.Constant(1)))
            from severity in Gen.Frequency((4, Gen.Constant(Severity.Damage)), (1, Gen.Constant(Severity.Shock)), (1, Gen.Constant(Severity.Hidden)))
            from last in Gen.Frequency((5, Gen.Constant(false)), (1, Gen.Constant(true)))
            select new OrderedCheck(turned ? black : red, turned ? red : black, minds, kind, setUp, severity, last)).ArrayOf(count)
        select new OrderCase(checks)).ToArbitrary();

    public FaultDictionary Dictionary()
    {
        SetUp[] setUps = [new("s0", "", [], [], 20), new("s1", "", [], [], 30)];
        Check[] checks = [.. Checks.Select((check, index) => check.Check(index))];
        Fault[] faults = [.. Checks.Select((check, index) => new Fault($"f{index}", "kind", "", [$"place {index}"], check.Severity, "", 0.01, ""))];
        FaultResponse[] responses = [.. Checks.Select((_, index) => new FaultResponse([index], [SmallDictionary.Bad]))];
        return new FaultDictionary(setUps, checks, faults, responses);
    }

    /// <summary>The least seconds of all orders that keep set-ups and severities, and of all ways round that checks allow.</summary>
    public double LeastSecondsByExhaustion(FaultDictionary dictionary, LeadPlacement from) => Least(dictionary, from, [.. Enumerable.Range(0, Checks.Length)]);

    private double Least(FaultDictionary dictionary, LeadPlacement state, int[] open)
    {
        if (open.Length == 0)
            return 0;
        var first = open.Min(check => RankOf(check, state));
        return open.Where(check => RankOf(check, state) == first)
            .SelectMany(check => Checks[check].Minds ? [(check, false)] : new[] { (check, false), (check, true) })
            .Min(way => Step(dictionary, state, way.check, way.Item2) + Least(dictionary, state.After(dictionary.Checks[way.check], way.Item2), [.. open.Except([way.check])]));
    }

    private (bool OtherSetUp, int SetUp, bool Last, int Severity) RankOf(int check, LeadPlacement state) =>
        ($"s{Checks[check].SetUp}" != state.SetUp, Checks[check].SetUp, Checks[check].Last, -(int)Checks[check].Severity);

    private static double Step(FaultDictionary dictionary, LeadPlacement state, int check, bool swapped) =>
        BenchTime.Of(dictionary, [OrderStep.From(state, check, dictionary.Checks[check], swapped)], BenchCosts.ByHand).Seconds;
}

/// <summary>One of them: places and kind by number.</summary>
public sealed record OrderedCheck(int Red, int Black, bool Minds, int Kind, int SetUp, Severity Severity, bool Last = false)
{
    public Check Check(int index) => new(
        $"c{index}",
        $"kind-{Kind}",
        $"s{SetUp}",
        "",
        "",
        [new CheckPoint("X", $"{Red}", ""), new CheckPoint("X", $"{Black}", "")],
        "Ω",
        SmallDictionary.Good,
        "",
        12)
    {
        MindsPolarity = Minds,
        DoLast = Last,
    };
}
