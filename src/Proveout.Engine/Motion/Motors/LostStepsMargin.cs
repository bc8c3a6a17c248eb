namespace Proveout.Engine.Motion;

/// <summary>How far a motor is from losing steps.</summary>
/// <param name="NeededNewtonMetres">Torque that the movement asks for.</param>
/// <param name="AvailableNewtonMetres">Torque that is there at that speed.</param>
public sealed record LostStepsMargin(double NeededNewtonMetres, double AvailableNewtonMetres)
{
    /// <summary>What is left in hand for what no model knows: resonance, a rough rail, a cold grease, a nozzle that touches (1.5 to 2: common practice).</summary>
    public const double UsualMargin = 2;

    /// <summary>Available over needed; infinite when nothing is needed.</summary>
    public double Ratio => NeededNewtonMetres > 0 ? AvailableNewtonMetres / NeededNewtonMetres : double.PositiveInfinity;

    /// <summary>
    /// How far the rotor lags behind the field, in full steps: (2 / pi) arcsin(needed / available), because torque goes with the sine of the electrical angle and a full
    /// step is a quarter turn of it; null when more is needed than there is and steps are lost.
    /// </summary>
    public double? LagFullSteps => Ratio >= 1 ? 2 / Math.PI * Math.Asin(Math.Min(1, NeededNewtonMetres / AvailableNewtonMetres)) : null;

    /// <summary>What it means.</summary>
    public MarginVerdict Verdict => Ratio < 1 ? MarginVerdict.LosesSteps : Ratio < UsualMargin ? MarginVerdict.Thin : MarginVerdict.Enough;
}
