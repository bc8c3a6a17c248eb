using System.Globalization;

namespace Proveout.Engine.Machine;

/// <summary>American wire gauge, ASTM B258: the diameter is 0.127 mm · 92^((36 − n)/39).</summary>
internal static class WireGauge
{
    private const int Thickest = 0;
    private const int Thinnest = 56;

    /// <summary>Cross-section of a solid round conductor of a gauge number, in square millimetres.</summary>
    public static double SquareMillimetres(int gauge)
    {
        var diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        return Math.PI / 4 * diameter * diameter;
    }

    /// <summary>Reads <c>AWG 20</c>; gauge numbers 0 to 56.</summary>
    public static bool TryParse(string text, out double squareMillimetres)
    {
        var plain = text.AsSpan().Trim();
        var known = plain.StartsWith("AWG", StringComparison.OrdinalIgnoreCase)
            & int.TryParse(
                plain.Length > 3 ? plain[3..].TrimStart() : default,
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var gauge)
            & gauge is >= Thickest and <= Thinnest;
        squareMillimetres = known ? SquareMillimetres(gauge) : 0;
        return known;
    }

    /// <summary>The gauge number whose cross-section is exactly this one, or null.</summary>
    public static int? GaugeOf(double squareMillimetres)
    {
        for (var gauge = Thickest; gauge <= Thinnest; gauge++)
            if (SquareMillimetres(gauge).Equals(squareMillimetres))
                return gauge;
        return null;
    }
}
