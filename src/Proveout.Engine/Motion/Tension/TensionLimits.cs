namespace Proveout.Engine.Motion;

/// <summary>Between which forces a belt may be set, in N.</summary>
public static class TensionLimits
{
    /// <summary>
    /// The most that a motor's bearing bears: the two runs pull together on the pulley, 2 T sin(wrap / 2) (statics). Rounded by nobody: the caller rounds down.
    /// </summary>
    /// <param name="radialNewtons">What the shaft may be pulled with at the pulley's place.</param>
    /// <param name="wrapRadians">Angle over which the belt touches the pulley.</param>
    public static double Highest(double radialNewtons, double wrapRadians) => radialNewtons / (2 * Math.Sin(wrapRadians / 2));

    /// <summary>
    /// The least at which the slack run stays taut while a mass is accelerated: the tight run gains half the force and the slack run loses half (two equal runs,
    /// linear), times a margin.
    /// </summary>
    /// <param name="kilograms">Moved mass.</param>
    /// <param name="metresPerSecondSquared">Acceleration.</param>
    /// <param name="margin">2 to 3 in practice (common practice).</param>
    public static double Lowest(double kilograms, double metresPerSecondSquared, double margin = 2) => margin * kilograms * metresPerSecondSquared / 2;
}
