namespace Proveout.Fuzz;

/// <summary>Changes of pieces: put in, taken out, repeated, moved, taken over from another input.</summary>
/// <param name="random">Chooses.</param>
/// <param name="tokens">Pieces that mean something to the reader.</param>
internal sealed class PieceChanges(Random random, IReadOnlyList<byte[]> tokens)
{
    public IReadOnlyList<Func<byte[], byte[], byte[]>> All => [Insert, Remove, Remove, Truncate, Repeat, RepeatOften, Move, Splice, Borrow, Replace, InsertToken, InsertToken, OverwriteToken];

    private byte[] Insert(byte[] input, byte[] other)
    {
        var bytes = new byte[random.Next(1, 17)];
        random.NextBytes(bytes);
        return Put(input, Place(input), 0, bytes);
    }

    private byte[] Remove(byte[] input, byte[] other) => Piece(input) is var (from, length) ? Put(input, from, length, []) : input;

    private byte[] Truncate(byte[] input, byte[] other) => input[..Place(input)];

    private byte[] Repeat(byte[] input, byte[] other) => Piece(input) is var (from, length) ? Put(input, Place(input), 0, input.AsSpan(from, length)) : input;

    private byte[] RepeatOften(byte[] input, byte[] other)
    {
        var (from, length) = Piece(input);
        var times = 1 << random.Next(2, 13);
        if (length == 0 || (long)length * times > 1 << 20)
            return input;
        var many = new byte[length * times];
        for (var time = 0; time < times; time++)
            input.AsSpan(from, length).CopyTo(many.AsSpan(time * length));
        return Put(input, from, length, many);
    }

    private byte[] Move(byte[] input, byte[] other)
    {
        var (from, length) = Piece(input);
        var rest = Put(input, from, length, []);
        return Put(rest, Place(rest), 0, input.AsSpan(from, length));
    }

    private byte[] Splice(byte[] input, byte[] other) => [.. input[..Place(input)], .. other[Place(other)..]];

    private byte[] Borrow(byte[] input, byte[] other) => Piece(other) is var (from, length) ? Put(input, Place(input), 0, other.AsSpan(from, length)) : input;

    private byte[] Replace(byte[] input, byte[] other)
    {
        var ((into, out_), (from, length)) = (Piece(input), Piece(other));
        return Put(input, into, out_, other.AsSpan(from, length));
    }

    private byte[] InsertToken(byte[] input, byte[] other) => tokens.Count == 0 ? input : Put(input, Place(input), 0, tokens[random.Next(tokens.Count)]);

    private byte[] OverwriteToken(byte[] input, byte[] other)
    {
        if (tokens.Count == 0)
            return input;
        var token = tokens[random.Next(tokens.Count)];
        var place = Place(input);
        return Put(input, place, Math.Min(token.Length, input.Length - place), token);
    }

    private int Place(byte[] input) => random.Next(input.Length + 1);

    // Short pieces are as likely as long ones.
    private (int From, int Length) Piece(byte[] input)
    {
        if (input.Length == 0)
            return (0, 0);
        var from = random.Next(input.Length);
        var most = random.Next(3) == 0 ? input.Length - from : Math.Min(input.Length - from, 1 << random.Next(0, 9));
        return (from, random.Next(1, most + 1));
    }

    private static byte[] Put(byte[] input, int at, int instead, ReadOnlySpan<byte> piece) => [.. input.AsSpan(0, at), .. piece, .. input.AsSpan(at + instead)];
}
