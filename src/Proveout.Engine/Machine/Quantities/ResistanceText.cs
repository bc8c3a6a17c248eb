using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>Resistances: a number and a unit, or a value code of IEC 60062.</summary>
internal static class ResistanceText
{
    /// <summary>Reads a resistance, in ohms.</summary>
    public static bool TryRead(string text, out double ohms, [NotNullWhen(false)] out QuantityFault? fault)
    {
        fault = null;
        return ValueCode.TryParse(text.AsSpan().Trim(), out ohms) || Measure.Resistance.TryRead(
            text,
            unitRequired: true,
            out ohms,
            out fault);
    }

    /// <summary>
    /// Reads a resistance as typed at the bench: a number alone is in ohms, and <c>k</c> or <c>M</c> may stand for kΩ or MΩ.
    /// </summary>
    public static bool TryReadTyped(string text, out double ohms)
    {
        var plain = QuantitySigns.ToPlain(text);
        if (plain is [.., 'k' or 'M'])
            plain += "ohm";
        return (ValueCode.TryParse(text.AsSpan().Trim(), out ohms)
                || Measure.Resistance.TryRead(plain, unitRequired: false, out ohms, out _))
            && ohms >= 0;
    }
}
