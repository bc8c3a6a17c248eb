namespace Proveout.Workshop;

/// <summary>What follows for an axis from its parts.</summary>
/// <param name="Steps">Steps and travel.</param>
/// <param name="Current">The current to set; null without the motor's data.</param>
/// <param name="Curve">Torque over speed; null without the motor's data.</param>
/// <param name="Load">What the movement asks; null without mass, acceleration and speed.</param>
/// <param name="Resonance">The belt's give; null without its data.</param>
/// <param name="Plots">Torque over speed, resonance over travel.</param>
public sealed record MotorView(StepsView Steps, CurrentView? Current, CurveView? Curve, LoadView? Load, ResonanceView? Resonance, IReadOnlyList<PlotView> Plots);

/// <summary>Steps and travel.</summary>
/// <param name="StepsByMillimetre">Microsteps for each millimetre.</param>
/// <param name="MillimetresByTurn">Travel for each turn of the motor.</param>
/// <param name="MillimetresByFullStep">Travel for each full step.</param>
public sealed record StepsView(double StepsByMillimetre, double MillimetresByTurn, double MillimetresByFullStep);

/// <summary>The current to set.</summary>
/// <param name="RmsAmperes">Root mean square.</param>
/// <param name="PeakAmperes">Peak of the sine.</param>
/// <param name="CopperWatts">Heat in both windings.</param>
/// <param name="Words">Both currents, rounded down.</param>
public sealed record CurrentView(double RmsAmperes, double PeakAmperes, double CopperWatts, string Words);

/// <summary>Torque over speed.</summary>
/// <param name="HoldsCurrent">False when the supply cannot drive the current even at rest.</param>
/// <param name="CornerMillimetresPerSecond">Speed of the axis above which torque falls.</param>
/// <param name="CornerTurnsPerSecond">The same at the shaft.</param>
/// <param name="HighestMillimetresPerSecond">Speed at which nothing is left.</param>
/// <param name="RestNewtonMetres">Torque below the corner.</param>
/// <param name="RiseMicroseconds">Time for the current to rise to its peak at rest; null when it never does.</param>
public sealed record CurveView(
    bool HoldsCurrent, double CornerMillimetresPerSecond, double CornerTurnsPerSecond, double HighestMillimetresPerSecond, double RestNewtonMetres, double? RiseMicroseconds);

/// <summary>What the movement asks.</summary>
/// <param name="NeededNewtonMetres">Torque that acceleration and drag ask for.</param>
/// <param name="AvailableNewtonMetres">Torque that is there at the highest speed.</param>
/// <param name="Ratio">Available over needed.</param>
/// <param name="LagMillimetres">How far the axis lags behind; null when steps are lost.</param>
/// <param name="MostAcceleration">Acceleration that the usual margin allows at that speed, in m/s².</param>
/// <param name="HighestSpeed">Speed up to which the usual margin holds at that acceleration, in mm/s.</param>
/// <param name="Verdict"><c>enough</c>, <c>thin</c> or <c>loses-steps</c>.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record LoadView(
    double NeededNewtonMetres, double AvailableNewtonMetres, double Ratio, double? LagMillimetres, double MostAcceleration, double HighestSpeed, string Verdict, string Sentence);

/// <summary>The belt's give.</summary>
/// <param name="LowestHertz">Lowest first resonance over the travel.</param>
/// <param name="HighestHertz">Highest.</param>
/// <param name="SoftestNewtonsPerMillimetre">Least stiffness at the carriage.</param>
/// <param name="GiveMillimetres">How far the carriage gives way under the acceleration there; null without an acceleration.</param>
public sealed record ResonanceView(double LowestHertz, double HighestHertz, double SoftestNewtonsPerMillimetre, double? GiveMillimetres);
