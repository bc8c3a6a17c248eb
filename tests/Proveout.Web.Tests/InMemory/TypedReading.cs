using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Web.Tests.InMemory;

internal static class TypedReading
{
    public static double? Parse(string text)
    {
        var plain = text.Trim().Replace(',', '.').Replace(" ", "", StringComparison.Ordinal).Replace("Ω", "", StringComparison.Ordinal).Replace("ohm", "", StringComparison.Ordinal);
        if (plain.Equals("OL", StringComparison.OrdinalIgnoreCase) || plain.Equals("open", StringComparison.OrdinalIgnoreCase))
            return ReadingInterval.OverRange;
        var at = plain.IndexOfAny(['k', 'M']);
        var factor = at < 0 ? 1 : plain[at] == 'k' ? 1e3 : 1e6;
        var digits = at < 0 ? plain : at == plain.Length - 1 ? plain[..at] : plain[..at] + "." + plain[(at + 1)..];
        return double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number * factor : null;
    }

    public static string Show(double value) =>
        double.IsPositiveInfinity(value) ? "OL" : value >= 1000 ? string.Create(CultureInfo.InvariantCulture, $"{value / 1000:0.##} kΩ") : string.Create(CultureInfo.InvariantCulture, $"{value:0.##} Ω");
}
