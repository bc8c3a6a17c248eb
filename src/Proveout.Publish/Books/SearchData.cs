using System.Text;
using System.Text.Json;

namespace Proveout.Publish.Books;

/// <summary>The words of a book and where they stand, as a script: pages opened from a memory stick may load a script, but not read a file.</summary>
internal static class SearchData
{
    /// <summary>The script.</summary>
    public static string Write(BuildBook book)
    {
        var sections = BookSection.Of(book).ToArray();
        var words = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        foreach (var (at, section) in sections.Index())
            foreach (var word in section.Words.SelectMany(WordsOf).Distinct())
                (words.TryGetValue(word, out var places) ? places : words[word] = []).Add(at);
        // The writer escapes what HTML or a script could take for its own, U+2028 included.
        var titles = JsonSerializer.Serialize(sections.Select(section => new[] { PlainText.Clean(section.Title), section.Address }));
        var found = JsonSerializer.Serialize(words.Select(word => new object[] { word.Key, word.Value }));
        return $"var bookPlaces = {titles};\nvar bookWords = {found};\n";
    }

    // Lower case, as search.js makes of what is typed; a word ends where neither letter nor digit stands.
    private static IEnumerable<string> WordsOf(string text)
    {
        var word = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune))
            {
                word.Append(Rune.ToLowerInvariant(rune).ToString());
            }
            else if (word.Length > 0)
            {
                yield return word.ToString();
                word.Clear();
            }
        }

        if (word.Length > 0)
            yield return word.ToString();
    }
}
