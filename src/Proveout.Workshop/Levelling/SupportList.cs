using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Reads where a plate stands.</summary>
internal static class SupportList
{
    // Far beyond any plate; what is no number is not within it either.
    private const double MostMillimetres = 100_000;

    /// <summary>Supports from <c>name x y</c>, by lines or semicolons.</summary>
    public static IReadOnlyList<Support> Read(string text, List<Diagnostic> problems)
    {
        List<Support> supports = [];
        foreach (var item in text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var words = item.Split((char[])[' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
            if (words.Length >= 3 && Number(words[^2]) is { } x && Number(words[^1]) is { } y)
                supports.Add(new Support(string.Join(' ', words[..^2]), x, y));
            else
                problems.Add(new Diagnostic("unclear-support", new SourcePlace("supports", 0, 0), $"{Quote.Of(item)} does not say where a support is.", "Write its name and its place in mm, such as `front left 10 10`."));
        }

        return supports;
    }

    private static double? Number(string word) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) <= MostMillimetres ? number : null;
}
