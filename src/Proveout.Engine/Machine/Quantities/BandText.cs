using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>
/// Bands of resistance as text: a value with a tolerance, two limits, or a lower limit, the value to expect and an upper limit.
/// </summary>
internal static class BandText
{
    private const string Open = "open";
    private const string Separator = "..";
    private const string PlusMinus = "+-";
    private const string Example = "105.8 ohm +-7 %` or `5 mohm .. 100 mohm";

    /// <summary>Reads a band.</summary>
    public static bool TryRead(string text, out ResistanceBand band, [NotNullWhen(false)] out QuantityFault? fault)
    {
        band = default;
        var plain = QuantitySigns.ToPlain(text);
        var around = plain.IndexOf(PlusMinus, StringComparison.Ordinal);
        if (around >= 0)
            return TryReadAround(text, plain[..around], plain[(around + PlusMinus.Length)..], out band, out fault);
        var limits = plain.Split(Separator);
        if (limits.Length is 2 or 3)
            return TryReadLimits(text, limits, out band, out fault);
        if (ResistanceText.TryRead(plain, out _, out fault))
            fault = new(
                "no-tolerance",
                $"{Quote.Of(text)} has no tolerance.",
                $"Write a value with a tolerance, or two limits: `{Example}`.");
        return false;
    }

    /// <summary>Text that reads as exactly this band.</summary>
    public static string Write(ResistanceBand band)
    {
        var (low, nominal) = (Measure.Resistance.Write(band.Low.Ohms), Measure.Resistance.Write(band.Nominal.Ohms));
        var high = band.High is { } limit ? Measure.Resistance.Write(limit.Ohms) : Open;
        var width = band.High is { } upper ? upper.Ohms / band.Nominal.Ohms - 1 : 0;
        var tolerance = DecimalDigits.Of(100 * width).Round(4, Rounding.Nearest);
        string[] shorter = band.High is null ? [$"{low} .. {high}"] : [$"{nominal} +-{tolerance} %", $"{low} .. {high}"];
        return shorter.FirstOrDefault(text => TryRead(text, out var read, out _) && read == band, $"{low} .. {nominal} .. {high}");
    }

    private static bool TryReadAround(
        string text,
        string nominal,
        string tolerance,
        out ResistanceBand band,
        [NotNullWhen(false)] out QuantityFault? fault)
    {
        band = default;
        if (!ResistanceText.TryRead(nominal, out var ohms, out fault))
            return false;
        var percent = tolerance.Trim();
        var length = DecimalText.LengthAtStart(percent);
        if (length == 0 || percent[length..].Trim() != "%")
            fault = new("not-a-quantity", $"The tolerance of {Quote.Of(text)} is not in per cent.", $"Write it as in `{Example}`.");
        else if (ohms <= 0 || DecimalText.Parse(percent.AsSpan(0, length), -2) is not (>= 0 and < 1) || percent[0] is '-' or '+')
            fault = new(
                "out-of-range",
                $"{Quote.Of(text)} reaches down to zero or below.",
                "Write a value above zero, and a tolerance of 0 % or more and less than 100 %.");
        else
            band = ResistanceBand.Around(UnitsNet.ElectricResistance.FromOhms(ohms), DecimalText.Parse(percent.AsSpan(0, length), -2));
        return fault is null;
    }

    private static bool TryReadLimits(string text, string[] limits, out ResistanceBand band, [NotNullWhen(false)] out QuantityFault? fault)
    {
        band = default;
        var ohms = new double[limits.Length];
        for (var at = 0; at < limits.Length; at++)
        {
            if (at == limits.Length - 1 && limits[at].Trim() == Open)
                ohms[at] = double.PositiveInfinity;
            else if (!ResistanceText.TryRead(limits[at], out ohms[at], out fault))
                return false;
        }

        var inOrder = ohms[0] > 0 && ohms.Zip(ohms.Skip(1)).All(pair => pair.First <= pair.Second);
        fault = inOrder ? null : new(
            "out-of-range",
            $"The limits of {Quote.Of(text)} are not in rising order above zero.",
            "Write the lower limit first, above zero.");
        if (inOrder)
            band = ohms.Length == 3 ? ResistanceBand.FromOhms(ohms[0], ohms[1], ohms[2]) : ResistanceBand.FromOhms(ohms[0], ohms[1]);
        return inOrder;
    }
}
