using System.Buffers;
using System.Text;

namespace Proveout.Engine.Machine;

/// <summary>Brings the several signs that people and keyboards have for one thing to the one spelling that is read.</summary>
internal static class QuantitySigns
{
    private static readonly SearchValues<char> PlainSigns =
        SearchValues.Create(" +-.,%0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNPQRSTUVWXYZ");

    /// <summary>
    /// The text with <c>ohm</c> for Ω, <c>u</c> for µ, <c>2</c> for ², <c>+-</c> for ±, a hyphen for a minus sign, and plain spaces.
    /// </summary>
    public static string ToPlain(string text)
    {
        var trimmed = text.AsSpan().Trim();
        if (!trimmed.ContainsAnyExcept(PlainSigns))
            return trimmed.Length == text.Length ? text : trimmed.ToString();
        var plain = new StringBuilder(text.Length);
        foreach (var sign in trimmed)
            plain.Append(PlainOf(sign));
        return plain.Replace("+/-", "+-").Replace("Ohm", "ohm").Replace("OHM", "ohm").ToString();
    }

    private static string PlainOf(char sign) => sign switch
    {
        '\u03A9' or '\u2126' => "ohm", // Greek capital omega, ohm sign
        '\u00B5' or '\u03BC' => "u", // micro sign, Greek small mu
        '²' => "2",
        '±' => "+-",
        '\u2212' => "-", // minus sign
        _ when char.IsWhiteSpace(sign) => " ",
        _ => sign.ToString(),
    };
}
