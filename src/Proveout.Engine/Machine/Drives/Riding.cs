using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A coordinate that may ride on axes, written <c>x + 20 mm</c>.</summary>
/// <param name="Fixed">The part that stays.</param>
/// <param name="Shares">What it rides on.</param>
public sealed partial record Riding(Length Fixed, ValueList<AxisShare> Shares)
{
    /// <summary>Regular expression of the whole text, for editors.</summary>
    internal const string Pattern = @"^\s*[+-]?\s*([0-9.,]+\s*(mm|cm|m)|([0-9.,]+\s+)?[A-Za-z][A-Za-z0-9_]*)(\s*[+-]\s*([0-9.,]+\s*(mm|cm|m)|([0-9.,]+\s+)?[A-Za-z][A-Za-z0-9_]*))*\s*$";

    /// <summary>Words that stand for units and so for no axis.</summary>
    internal static readonly string[] Units = ["mm", "cm", "m"];

    /// <summary>Reads it; null when the text is none.</summary>
    public static Riding? TryParse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (at, millimetres, shares) = (0, 0.0, new List<AxisShare>());
        while (at < text.Length)
        {
            var term = Term().Match(text, at);
            if (!term.Success || term.Length == 0 || (at > 0 && term.Groups["sign"].Length == 0))
                return null;
            var sign = term.Groups["sign"].Value == "-" ? -1 : 1;
            var number = term.Groups["number"] is { Success: true, Value: var digits } ? double.Parse(digits.Replace(',', '.'), CultureInfo.InvariantCulture) : 1;
            var word = term.Groups["word"].Value;
            if (Array.IndexOf(Units, word) is >= 0 and var unit)
                millimetres += sign * number * (unit switch { 0 => 1, 1 => 10, _ => 1000 });
            else
                shares.Add(new(word, sign * number));
            if (!double.IsFinite(number) || (Units.Contains(word) && !term.Groups["number"].Success))
                return null;
            at += term.Length;
        }

        return at == 0 ? null : new(Length.FromMillimeters(millimetres), shares.ToValueList());
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (var share in Shares)
            Append(text, share.Factor, Math.Abs(share.Factor) is 1 ? share.Axis : $"{DecimalDigits.Of(Math.Abs(share.Factor)).Shift(0)} {share.Axis}");
        if (Fixed.Millimeters != 0 || Shares.Count == 0)
            Append(text, Fixed.Millimeters, $"{DecimalDigits.Of(Math.Abs(Fixed.Millimeters)).Shift(0)} mm");
        return text.ToString();
    }

    private static void Append(StringBuilder text, double signed, string term) =>
        text.Append(text.Length == 0 ? (signed < 0 ? "-" : "") : signed < 0 ? " - " : " + ").Append(term);

    [GeneratedRegex(@"\G\s*(?<sign>[+-])?\s*(?:(?<number>[0-9]+(?:[.,][0-9]+)?)\s*)?(?<word>[A-Za-z][A-Za-z0-9_]*)\s*")]
    private static partial Regex Term();
}
