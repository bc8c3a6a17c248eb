using PdfSharp.Drawing;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Report;

/// <summary>Breaks text into lines that fit a width: between words where it can, but not between a figure and its unit; then behind a hyphen or a stroke, inside a word where it must.</summary>
internal static class PdfWrap
{
    private static readonly XGraphics Ruler = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    private static readonly Lock Gate = new();

    /// <summary>Width of a line in points.</summary>
    public static double Width(string text, PdfStyle style)
    {
        lock (Gate)
            return Ruler.MeasureString(text, style.Font).Width;
    }

    /// <summary>Width that the longest stretch of a text takes that is not broken gladly.</summary>
    public static double LongestWord(string text, PdfStyle style) =>
        Words(text).SelectMany(Joints).Select(piece => Width(piece, style)).DefaultIfEmpty(0).Max();

    /// <summary>The lines of some paragraphs.</summary>
    public static IReadOnlyList<PdfRun> Lines(IEnumerable<PdfRun> paragraphs, double width) =>
        paragraphs.SelectMany(paragraph => Lines(paragraph.Text, paragraph.Style, width).Select(line => new PdfRun(line, paragraph.Style))).ToList();

    /// <summary>The beginning of a text that fits a width, with an ellipsis when something is left out.</summary>
    public static string Fit(string text, PdfStyle style, double width)
    {
        var clean = FontCoverage.Spell(PlainText.Clean(text));
        if (Width(clean, style) <= width)
            return clean;
        var characters = PlainText.Characters(clean);
        var kept = characters.Count;
        while (kept > 0 && Width(string.Concat(characters.Take(kept)) + "…", style) > width)
            kept--;
        return string.Concat(characters.Take(kept)) + "…";
    }

    private static IEnumerable<string> Words(string text) =>
        KeptBlanks.BeforeUnits(FontCoverage.Spell(PlainText.Clean(text))).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.Replace(KeptBlanks.Blank, ' '));

    // "Residual-current" may stand on two lines behind its hyphen.
    private static IEnumerable<string> Joints(string word)
    {
        var start = 0;
        for (var at = 1; at < word.Length - 1; at++)
            if (word[at] is '-' or '/' && char.IsLetter(word[at - 1]) && char.IsLetter(word[at + 1]))
            {
                yield return word[start..(at + 1)];
                start = at + 1;
            }

        yield return word[start..];
    }

    private static IEnumerable<string> Lines(string text, PdfStyle style, double width)
    {
        var (line, isJoined) = ("", false);
        foreach (var (word, joins) in Words(text).SelectMany(word => Pieces(word, style, width)))
        {
            var longer = line.Length == 0 ? word : isJoined ? line + word : $"{line} {word}";
            isJoined = joins;
            if (line.Length > 0 && Width(longer, style) > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        if (line.Length > 0)
            yield return line;
    }

    // The pieces of a word, and whether the next belongs to it without a blank.
    private static IEnumerable<(string Piece, bool IsJoined)> Pieces(string word, PdfStyle style, double width)
    {
        if (Width(word, style) <= width)
            return [(word, false)];
        if (word.Contains(' '))
            return word.Split(' ').SelectMany(part => Pieces(part, style, width));
        string[] pieces = [.. Joints(word).SelectMany(piece => Width(piece, style) <= width ? [piece] : Cut(piece, style, width))];
        return pieces.Select((piece, at) => (piece, at < pieces.Length - 1));
    }

    private static List<string> Cut(string word, PdfStyle style, double width)
    {
        var pieces = new List<string>();
        var piece = "";
        foreach (var character in PlainText.Characters(word))
        {
            if (piece.Length > 0 && Width(piece + character, style) > width)
            {
                pieces.Add(piece);
                piece = "";
            }

            piece += character;
        }

        pieces.Add(piece);
        return pieces;
    }
}
