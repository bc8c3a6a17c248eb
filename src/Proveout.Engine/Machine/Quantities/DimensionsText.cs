using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>Lengths that belong together, with one unit at their end: <c>110 x 90 x 35 mm</c>.</summary>
internal static class DimensionsText
{
    private static readonly string[] Examples = ["60 mm", "120 x 40 mm", "110 x 90 x 35 mm"];

    /// <summary>A well-written example.</summary>
    /// <param name="count">How many lengths.</param>
    public static string Example(int count) => Examples[count - 1];

    /// <summary>Regular expression for editors.</summary>
    /// <param name="least">Fewest lengths.</param>
    /// <param name="most">Most lengths.</param>
    public static string Pattern(int least, int most) =>
        $@"^\s*[0-9]+([.,][0-9]+)?(\s*[x×]\s*[0-9]+([.,][0-9]+)?){{{least - 1},{most - 1}}}\s*(mm|cm|m)\s*$";

    /// <summary>Reads them, in millimetres.</summary>
    /// <param name="text">The text.</param>
    /// <param name="least">Fewest lengths.</param>
    /// <param name="most">Most lengths.</param>
    /// <param name="mayBeZero">True for places, which may lie on an edge.</param>
    /// <param name="millimetres">The lengths.</param>
    /// <param name="fault">Why there are none.</param>
    public static bool TryRead(string text, int least, int most, bool mayBeZero, out double[] millimetres, [NotNullWhen(false)] out QuantityFault? fault)
    {
        var pieces = text.Split('x', '×');
        var unit = pieces[^1].Trim().AsSpan().TrimStart("0123456789.,+ \t").ToString();
        millimetres = new double[pieces.Length];
        fault = pieces.Length < least || pieces.Length > most ? Miscounted(text, least, most)
            : unit.Length == 0 ? new("no-unit", $"{Quote.Of(text)} has no unit.", Mend(least))
            : null;
        for (var at = 0; at < pieces.Length && fault is null; at++)
        {
            var piece = at + 1 < pieces.Length ? $"{pieces[at].Trim()} {unit}" : pieces[at];
            if (Measure.Length.TryRead(piece, unitRequired: true, out millimetres[at], out fault) && (millimetres[at] < 0 || (millimetres[at] == 0 && !mayBeZero)))
                fault = new("out-of-range", $"{Quote.Of(text)} has a length that is {(mayBeZero ? "below zero" : "not above zero")}.", Mend(least));
        }

        return fault is null;
    }

    /// <summary>Text that reads as exactly these lengths.</summary>
    /// <param name="millimetres">One to three lengths.</param>
    public static string Write(params ReadOnlySpan<double> millimetres)
    {
        var numbers = new List<string>();
        foreach (var length in millimetres)
            numbers.Add(DecimalDigits.Of(length).Shift(0).ToString());
        return $"{string.Join(" x ", numbers)} mm";
    }

    private static QuantityFault Miscounted(string text, int least, int most) =>
        new("wrong-count", $"{Quote.Of(text)} is not {(least == most ? $"{least}" : $"{least} or {most}")} lengths.", Mend(least));

    private static string Mend(int count) => $"Write it like {Quote.Of(Example(count))}.";
}
