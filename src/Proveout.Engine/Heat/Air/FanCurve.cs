namespace Proveout.Engine.Heat;

/// <summary>Pressure that a fan makes over the flow through it, falling all the way, at the density of a data sheet.</summary>
/// <remarks>
/// Beyond its ends, where another fan drives air through it forward or back, the curve goes on straight with the slope from its most pressure to its most flow:
/// common practice where nothing is measured.
/// </remarks>
public sealed class FanCurve
{
    private readonly (double Flow, double Pascals)[] _corners;

    private FanCurve((double Flow, double Pascals)[] corners) => _corners = corners;

    /// <summary>Flow in m³/s without any pressure against it.</summary>
    public double MostFlow => _corners[^1].Flow;

    /// <summary>Pressure in Pa without any flow.</summary>
    public double MostPascals => _corners[0].Pascals;

    /// <summary>A curve through points.</summary>
    /// <param name="mostPascals">Pressure without flow, above zero.</param>
    /// <param name="mostFlow">Flow in m³/s without pressure, above zero.</param>
    /// <param name="between">Points between, by rising flow; the pressure never rises.</param>
    public static FanCurve Of(double mostPascals, double mostFlow, params (double Flow, double Pascals)[] between)
    {
        (double Flow, double Pascals)[] corners = [(0, mostPascals), .. between, (mostFlow, 0)];
        for (var at = 1; at < corners.Length; at++)
            if (!(corners[at].Flow > corners[at - 1].Flow) || corners[at].Pascals > corners[at - 1].Pascals)
                throw new ArgumentException("The curve of a fan falls as its flow rises.", nameof(between));
        return new(corners);
    }

    /// <summary>Pressure in Pa that it makes at a flow in m³/s; negative when air is driven through it.</summary>
    public double PascalsAt(double flow)
    {
        if (flow <= 0)
            return MostPascals * (1 - (flow / MostFlow));
        for (var at = 1; at < _corners.Length; at++)
            if (flow <= _corners[at].Flow)
            {
                var ((before, high), (after, low)) = (_corners[at - 1], _corners[at]);
                return high + ((flow - before) / (after - before) * (low - high));
            }

        return MostPascals * (1 - (flow / MostFlow));
    }

    /// <summary>The same fan at another speed: flow goes with speed, pressure with its square (laws of fans, ISO 5801 annex; common practice).</summary>
    /// <param name="share">Speed over that of the data sheet, above zero.</param>
    public FanCurve AtSpeed(double share) => new([.. _corners.Select(corner => (share * corner.Flow, share * share * corner.Pascals))]);

    /// <summary>Several such fans one behind another: their pressures add.</summary>
    public FanCurve InSeries(int count) => new([.. _corners.Select(corner => (corner.Flow, count * corner.Pascals))]);
}
