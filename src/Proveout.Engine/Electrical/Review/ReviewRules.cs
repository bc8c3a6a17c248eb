namespace Proveout.Engine.Electrical;

/// <summary>The register of review rules: a new rule is one new file and one line here.</summary>
public static class ReviewRules
{
    /// <summary>Every rule, what protects people first.</summary>
    public static IReadOnlyList<IReviewRule> All { get; } =
    [
        new MainsInletKnown(),
        new ExposedPartBonded(),
        new ProtectiveSection(),
        new ProtectiveColour(),
        new NeutralColour(),
        new NeutralNotSwitchedAlone(),
        new MainSwitchTwoPole(),
        new HeaterHasCutOff(),
        new FuseProtectsConductor(),
        new FusesProtectReturn(),
        new FuseBearsLoad(),
        new RoutesKeptApart(),
        new LeastSection(),
        new ZeroVoltBondedOnce(),
        new JumperVoltage(),
        new JumperFitted(),
        new TerminalBearsLoad(),
        new OneConductorPerTerminal(),
        new VoltageDrop(),
    ];
}
