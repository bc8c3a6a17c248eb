using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What follows for an axis from its parts.</summary>
internal sealed record MotorShape(string Format, StepsView Steps, CurrentView? Current, CurveView? Curve, LoadView? Load, ResonanceView? Resonance, long? Kept)
{
    public static MotorShape Of(MotorView view, long? kept) => new("proveout-motor 1", view.Steps, view.Current, view.Curve, Finite(view.Load), view.Resonance, kept);

    // JSON knows no infinity; a movement that needs no torque has no ratio worth a number.
    private static LoadView? Finite(LoadView? load) => load is { Ratio: double.PositiveInfinity } ? load with { Ratio = double.MaxValue } : load;
}
