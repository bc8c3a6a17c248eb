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
    public static IEnumerable<WiringFault> Generate(WiringContext context) =>
        from rule in All
        where context.Design.IsImagined(rule.Kind)
        from fault in rule.Generate(context)
        select context.Design.PriorOf(rule.Kind) is { } prior ? fault with { Fault = fault.Fault with { Prior = prior } } : fault;
}
