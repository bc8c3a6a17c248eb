namespace Proveout.Engine.Electrical;

/// <summary>The register of wiring fault rules: a new kind is one new file and one line here.</summary>
public static class WiringFaultRules
{
    /// <summary>Every rule, in the order in which coverage is listed.</summary>
    public static IReadOnlyList<IWiringFaultRule> All { get; } =
    [
        new BondMissing(),
        new ConductorMissing(),
        new EndOnNeighbour(),
        new EndsSwapped(),
        new PartReversed(),
        new Bridge(),
        new PoorJoint(),
        new JumperWrong(),
        new JumperMissing(),
        new ConnectorsExchanged(),
        new WrongValue(),
        new FuseOpen(),
    ];
}
