using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Reads corners in space and tape readings between them, an item a line or between semicolons.</summary>
internal static class SpaceLists
{
    // Far beyond any frame; what is no number is not within it either.
    private const double MostMillimetres = 100_000;

    // A file that is something else would be refused word by word.
    private const int MostProblems = 20;

    /// <summary>Corners as <c>name x y z</c>, with a measured height as a fifth word.</summary>
    public static IReadOnlyList<SpacePoint> Points(NamedText text, double heightError, List<Diagnostic> problems)
    {
        List<SpacePoint> points = [];
        foreach (var (line, words) in Items(text).TakeWhile(_ => problems.Count < MostProblems))
        {
            double?[] numbers = [.. words.Skip(1).Select(Number)];
            if (numbers.Length is 3 or 4 && numbers.All(number => number is not null))
                points.Add(new(words[0], numbers[0]!.Value, numbers[1]!.Value, numbers[2]!.Value, numbers.Length == 4 ? Uncertain.Within(numbers[3]!.Value, heightError) : null));
            else
                problems.Add(new Diagnostic("unclear-point", new SourcePlace(text.Name, line, 1), $"{Quote.Of(string.Join(' ', words))} does not say where a corner is.", "Write its name and its place in mm as drawn, to the right, back and up, such as `A 0 0 0`; behind it the height over a slab, if you measured it."));
        }

        return points;
    }

    /// <summary>Readings as <c>A-B 300.2</c> or <c>A B 300.2</c>.</summary>
    public static IReadOnlyList<MeasuredDistance> Distances(NamedText text, double tapeError, List<Diagnostic> problems)
    {
        List<MeasuredDistance> distances = [];
        foreach (var (line, words) in Items(text).TakeWhile(_ => problems.Count < MostProblems))
        {
            var ends = words.Length == 2 ? words[0].Split('-') : words.Length == 3 ? words[..2] : [];
            if (ends.Length == 2 && ends.All(end => end.Length > 0) && Number(words[^1]) is { } length)
                distances.Add(new(ends[0], ends[1], Uncertain.Within(length, tapeError)));
            else
                problems.Add(new Diagnostic("unclear-distance", new SourcePlace(text.Name, line, 1), $"{Quote.Of(string.Join(' ', words))} is no distance between two corners.", "Write both corners and the reading in mm, such as `A-B 300.2`."));
        }

        return distances;
    }

    private static IEnumerable<(int Line, string[] Words)> Items(NamedText text) =>
        from line in text.Text.Split('\n').Index()
        from item in line.Item.Split(';')
        let words = item.Split((char[])[' ', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries)
        where words.Length > 0 && words[0][0] != '#'
        select (line.Index + 1, words);

    private static double? Number(string word) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) <= MostMillimetres ? number : null;
}
