using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>Writes figures with no more digits than they are worth (JCGM 100:2008, 7.2.6: uncertainties to at most two digits).</summary>
public static class SensibleDigits
{
    /// <summary>A figure with its expanded uncertainty: two digits of it, rounded up, and as many places of the figure.</summary>
    public static string Of(Uncertain figure, string unit)
    {
        var places = Places(figure.Expanded);
        return string.Create(CultureInfo.InvariantCulture, $"{Fixed(figure.Value, places)} ± {Fixed(RoundedUp(figure.Expanded, places), places)} {unit}").TrimEnd();
    }

    /// <summary>A figure to some significant digits, without exponent.</summary>
    public static string Of(double value, int digits = 3)
    {
        if (value == 0 || !double.IsFinite(value))
            return value == 0 ? "0" : "not finite";
        var places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return Fixed(value, places);
    }

    // Places after the point that leave two digits of an uncertainty; negative before the point.
    private static int Places(double uncertainty) =>
        uncertainty > 0 && double.IsFinite(uncertainty) ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(uncertainty)), -12, 12) : 6;

    private static double RoundedUp(double value, int places)
    {
        var scale = Math.Pow(10, places);
        // A hair is forgiven, so that 0.2 is not rounded to 0.21 by its binary form.
        return Math.Ceiling((value * scale) - 1e-9) / scale;
    }

    private static string Fixed(double value, int places)
    {
        var scale = Math.Pow(10, Math.Min(places, 0));
        return (Math.Round(value * scale) / scale is var coarse && places < 0 ? coarse : value).ToString($"F{Math.Clamp(places, 0, 12)}", CultureInfo.InvariantCulture);
    }
}
