namespace Proveout.Engine.Electrical;

/// <summary>Which precaution meets which harm.</summary>
/// <remarks>
/// Residual-current device: additional protection of 30 mA, IEC 60364-4-41 clause 415.1. Series lamp and current-limited bench supply: common practice.
/// </remarks>
internal static class Precautions
{
    /// <summary>The precaution against what was found.</summary>
    /// <param name="finding">What a mistake does.</param>
    /// <param name="mains">True when the harm comes from mains voltage.</param>
    public static Precaution Against(LiveFinding finding, bool mains) => finding.Kind switch
    {
        LiveFindingKind.TouchVoltage or LiveFindingKind.ProtectionMissing or LiveFindingKind.MainsOnExtraLowVoltage or LiveFindingKind.LiveWhenOff =>
            mains ? Precaution.ResidualCurrentDevice : Precaution.HandOnSwitch,
        LiveFindingKind.ConductorOverload or LiveFindingKind.HotJoint or LiveFindingKind.ProtectionInterrupts or LiveFindingKind.OutputOverload
            or LiveFindingKind.SupplyOverload or LiveFindingKind.OverVoltage or LiveFindingKind.ReverseVoltage =>
            mains ? Precaution.SeriesLamp : Precaution.LimitedSupply,
        _ => Precaution.HandOnSwitch,
    };

    /// <summary>What to do, in a sentence.</summary>
    /// <param name="precaution">The precaution.</param>
    /// <param name="amperes">Current that the sound stage takes from its extra-low-voltage supply; null when it has none.</param>
    public static string Words(Precaution precaution, double? amperes) => precaution switch
    {
        Precaution.ResidualCurrentDevice =>
            "Feed the machine through a residual-current device of 30 mA whose test button you have just tried. One hand, dry shoes, and touch no metal of the machine.",
        Precaution.SeriesLamp => "For the first try put a filament lamp of 60 W in series with the line, in an insulated holder: it must not light up fully.",
        Precaution.LimitedSupply => amperes is { } sound
            ? FormattableString.Invariant($"For the first try feed this stage from a bench supply limited to {Math.Max(0.2, Math.Ceiling(sound * 12) / 10):0.0} A instead of the machine's own supply.")
            : "For the first try feed this stage from a bench supply with its current limited.",
        _ => "Stand by with a hand on the main switch; look at what should stay off, and feel for warmth only with the machine isolated again.",
    };
}
