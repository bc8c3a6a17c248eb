using System.Text;

namespace Proveout.Fuzz;

/// <summary>Changes of text: numbers, words, brackets, and characters that are no characters.</summary>
/// <param name="random">Chooses.</param>
/// <param name="tokens">Words that the reader knows.</param>
internal sealed class TextChanges(Random random, IReadOnlyList<byte[]> tokens)
{
    private static readonly byte[][] Numbers =
    [
        .. new[]
        {
            "0", "-0", "-1", "1", "2", "0.0001", "1e308", "1e-308", "1e999", "-1e999", "NaN", "nan", "Infinity", "∞", "9999999999999999999", "99999999999999999999999999999999999999",
            "2147483647", "2147483648", "-2147483649", "0x10", "1,5", "1.5.2", "1.234,5", "٣", "½", "+5", "1_000", "4k7", "1e", ".5", "5.", "--1", "1 000", "100000", "1000000000", "0.1e-5000",
        }.Select(Encoding.UTF8.GetBytes),
    ];

    // Overlong forms, lone surrogates, lone and missing continuations, beyond the last code point, a byte-order mark, not-characters, marks that turn or join text.
    private static readonly byte[][] Damage =
    [
        [0xC0, 0x80], [0xC1, 0xBF], [0xE0, 0x80, 0xAF], [0xED, 0xA0, 0x80], [0xED, 0xBF, 0xBF], [0x80], [0xBF], [0xE2, 0x82], [0xF0, 0x9F, 0x92], [0xF4, 0x90, 0x80, 0x80], [0xFF], [0xFE],
        [0xEF, 0xBB, 0xBF], [0xEF, 0xBF, 0xBE], [0xEF, 0xBF, 0xBF], [0xC2, 0x85], [0xE2, 0x80, 0xA8], [0xE2, 0x80, 0xAE], [0xE2, 0x80, 0x8F], [0xE2, 0x81, 0xA6], [0xCC, 0x81], [0xE2, 0x80, 0x8D], [0xC2, 0xA0],
        [0xF0, 0x9F, 0x94, 0xA5], [0x00], [0x1B, 0x5B, 0x33, 0x31, 0x6D], [0x07], [0x0B], [0x0C],
    ];

    private static readonly (string Open, string Close)[] Brackets = [("[", "]"), ("{", "}"), ("\"", "\""), ("'", "'"), ("- ", ""), ("{a: ", "}"), ("? ", ""), ("(", ")"), ("`", "`")];

    public IReadOnlyList<Func<byte[], byte[], byte[]>> All => [ChangeNumber, ChangeNumber, ChangeNumber, ChangeWord, ChangeWord, SpoilCharacter, Bracket, Nest];

    private byte[] ChangeNumber(byte[] input, byte[] other)
    {
        var number = Numbers[random.Next(Numbers.Length)];
        return Run(input, value => value is (>= (byte)'0' and <= (byte)'9') or (byte)'.') is var (from, length) && length > 0 ? Put(input, from, length, number) : input;
    }

    private byte[] ChangeWord(byte[] input, byte[] other)
    {
        var (from, length) = Run(input, IsOfWord);
        if (length == 0)
            return input;
        if (random.Next(2) == 0 && tokens.Count > 0)
            return Put(input, from, length, tokens[random.Next(tokens.Count)]);
        var (start, count) = Run(other, IsOfWord);
        return Put(input, from, length, other.AsSpan(start, count));
    }

    private byte[] SpoilCharacter(byte[] input, byte[] other) => Put(input, random.Next(input.Length + 1), 0, Damage[random.Next(Damage.Length)]);

    private byte[] Bracket(byte[] input, byte[] other)
    {
        var (open, close) = Brackets[random.Next(Brackets.Length)];
        var (from, length) = Run(input, value => value is not ((byte)'\n' or (byte)' '));
        return Put(input, from, length, [.. Encoding.ASCII.GetBytes(open), .. input.AsSpan(from, length), .. Encoding.ASCII.GetBytes(close)]);
    }

    private byte[] Nest(byte[] input, byte[] other)
    {
        var (open, close) = Brackets[random.Next(Brackets.Length)];
        var deep = 1 << random.Next(2, 14);
        var isClosed = random.Next(2) == 0;
        return Put(input, random.Next(input.Length + 1), 0, Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat(open, deep)) + (isClosed ? string.Concat(Enumerable.Repeat(close, deep)) : "")));
    }

    private static bool IsOfWord(byte value) => value is (>= (byte)'a' and <= (byte)'z') or (>= (byte)'A' and <= (byte)'Z') or (>= (byte)'0' and <= (byte)'9') or (byte)'-' or (byte)'_' or >= 0x80;

    // A run of such bytes at or behind a place that is chosen.
    private (int From, int Length) Run(byte[] input, Func<byte, bool> isOfRun)
    {
        if (input.Length == 0)
            return (0, 0);
        var from = random.Next(input.Length);
        while (from < input.Length && !isOfRun(input[from]))
            from++;
        while (from > 0 && from < input.Length && isOfRun(input[from - 1]))
            from--;
        var end = from;
        while (end < input.Length && isOfRun(input[end]))
            end++;
        return (from, end - from);
    }

    private static byte[] Put(byte[] input, int at, int instead, ReadOnlySpan<byte> piece) => [.. input.AsSpan(0, at), .. piece, .. input.AsSpan(at + instead)];
}
