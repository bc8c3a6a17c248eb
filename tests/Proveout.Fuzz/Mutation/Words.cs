namespace Proveout.Fuzz;

/// <summary>Words that stand in inputs: keys, names and headings that a reader knows.</summary>
internal static class Words
{
    private const int Shortest = 2, Longest = 32, Most = 2000;

    public static IReadOnlyList<byte[]> Of(IEnumerable<byte[]> inputs)
    {
        var words = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var input in inputs)
        {
            for (int start = 0, at = 0; at <= input.Length; at++)
            {
                if (at < input.Length && IsOfWord(input[at]))
                    continue;
                if (at - start is >= Shortest and <= Longest && words.Count < Most)
                    words.Add(System.Text.Encoding.ASCII.GetString(input, start, at - start));
                start = at + 1;
            }
        }

        return [.. words.Select(System.Text.Encoding.ASCII.GetBytes)];
    }

    private static bool IsOfWord(byte value) => value is (>= (byte)'a' and <= (byte)'z') or (>= (byte)'A' and <= (byte)'Z') or (>= (byte)'0' and <= (byte)'9') or (byte)'-' or (byte)'_';
}
