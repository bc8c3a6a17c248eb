using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>Cross-sections: square millimetres (IEC 60228) or American wire gauge (ASTM B258).</summary>
internal static class SectionText
{
    /// <summary>Reads a cross-section, in square millimetres.</summary>
    public static bool TryRead(string text, out double squareMillimetres, [NotNullWhen(false)] out QuantityFault? fault)
    {
        if (WireGauge.TryParse(text, out squareMillimetres))
            fault = null;
        else if (text.AsSpan().TrimStart().StartsWith("AWG", StringComparison.OrdinalIgnoreCase))
            fault = new(
                "out-of-range",
                $"{Quote.Of(text)} is not a wire gauge of ASTM B258.",
                $"Write a whole number from 0 to 56, such as {Quote.Of("AWG 20")}.");
        else
            Measure.Area.TryRead(text, unitRequired: true, out squareMillimetres, out fault);
        return fault is null;
    }

    /// <summary>Text that reads as exactly this cross-section.</summary>
    public static string Write(double squareMillimetres) =>
        WireGauge.GaugeOf(squareMillimetres) is { } gauge ? $"AWG {gauge}" : Measure.Area.Write(squareMillimetres);
}
