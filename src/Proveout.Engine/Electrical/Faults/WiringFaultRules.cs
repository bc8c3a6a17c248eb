using System.Collections.Concurrent;

namespace Proveout.Engine.Electrical;

/// <summary>The register of wiring fault rules: a new kind is one new file and one line here.</summary>
public static class WiringFaultRules
{
    /// <summary>Every rule, in the order in which coverage is listed.</summary>
    public static IReadOnlyList<IWiringFaultRule> All { get; } =
    [
        new BondMissing(),
        new BondExtra(),
        new ConductorMissing(),
        new DataCoresMissing(),
        new EndOnNeighbour(),
        new AheadOfSwitch(),
        new EndsSwapped(),
        new EndsExchanged(),
        new LineNeutralSwapped(),
        new ConductorsExchanged(),
        new ContactsMirrored(),
        new ContactsShifted(),
        new SidesExchanged(),
        new PartReversed(),
        new PartsExchanged(),
        new ConnectorsExchanged(),
        new PlugShifted(),
        new PlugReversed(),
        new ContactPushedBack(),
        new PoorMating(),
        new Bridge(),
        new BridgeInCable(),
        new BridgeToMetal(),
        new BodyContact(),
        new InsulationBroken(),
        new Leakage(),
        new WeakJoint(),
        new PoorJoint(),
        new JumperWrong(),
        new JumperMissing(),
        new JumperAcross(),
        new JumperExtra(),
        new TerminatorExtra(),
        new SuppliesJoined(),
        new ContactSense(),
        new ContactStuckClosed(),
        new ContactNeverCloses(),
        new SwitchShorted(),
        new WrongValue(),
        new SensorOtherType(),
        new ElementOpen(),
        new ElementShorted(),
        new FuseOpen(),
        new ProtectionBypassed(),
    ];

    /// <summary>Every fault that the machine can have, of the kinds that its file leaves on, each with its prior.</summary>
    public static IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var ofRules = new WiringFault[All.Count][];
        Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, All.Count), EnumerablePartitionerOptions.NoBuffering), rule => ofRules[rule] = [.. OfRule(context, All[rule])]);
        return ofRules.SelectMany(ofRule => ofRule);
    }

    private static IEnumerable<WiringFault> OfRule(WiringContext context, IWiringFaultRule rule) =>
        from fault in context.Design.IsImagined(rule.Kind) ? rule.Generate(context) : []
        select context.Design.PriorOf(rule.Kind) is { } prior ? fault with { Fault = fault.Fault with { Prior = prior } } : fault;
}
