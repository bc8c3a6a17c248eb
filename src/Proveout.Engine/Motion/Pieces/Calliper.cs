namespace Proveout.Engine.Motion;

/// <summary>What is known of a calliper, to correct its readings by and to count as doubt that all of them share.</summary>
/// <param name="StepMm">Step of its display or scale.</param>
/// <param name="Zero">What it shows when it should show nothing, in mm.</param>
/// <param name="InsideJaws">What the inside jaws show too much besides, in mm.</param>
/// <param name="Scale">What it shows too much, as a share of the length.</param>
public sealed record Calliper(double StepMm, Uncertain Zero, Uncertain InsideJaws, Uncertain Scale)
{
    // Length over which a stated limit of error is reached by scale alone.
    private const double LimitLengthMm = 150;

    /// <summary>A calliper of which only the limit of error is stated.</summary>
    /// <param name="stepMm">Step of its display.</param>
    /// <param name="limitMm">Largest error that its sheet allows; 0.03 mm is usual up to 150 mm (ISO 13385-1, from memory).</param>
    public static Calliper Unchecked(double stepMm, double limitMm) =>
        new(stepMm, Uncertain.Within(0, limitMm), Uncertain.Within(0, limitMm), Uncertain.Within(0, limitMm / LimitLengthMm));

    /// <summary>What a reading comes to without the known errors.</summary>
    public double Corrected(double readingMm, PieceGrip grip) =>
        (readingMm - Zero.Value - (grip == PieceGrip.Inside ? InsideJaws.Value : 0)) / (1 + Scale.Value);
}
