namespace Proveout.Fuzz;

/// <summary>Makes inputs of inputs, by changes of bytes, of numbers, of text and of lines.</summary>
/// <param name="random">Chooses; the same seed chooses the same.</param>
/// <param name="tokens">Pieces that mean something to the reader.</param>
/// <param name="mostBytes">Largest input that is made.</param>
public sealed class Mutator(Random random, IReadOnlyList<byte[]> tokens, int mostBytes)
{
    private const int MostChanges = 6;

    private readonly IReadOnlyList<Func<byte[], byte[], byte[]>> _changes =
    [
        .. new ByteChanges(random).All, .. new PieceChanges(random, tokens).All, .. new TextChanges(random, tokens).All, .. new LineChanges(random).All,
    ];

    /// <summary>Chooses.</summary>
    public Random Random => random;

    /// <summary>Names of nothing: how many kinds of change there are.</summary>
    public int Kinds => _changes.Count;

    /// <summary>An input changed in one to six ways.</summary>
    /// <param name="input">The input.</param>
    /// <param name="other">Another, of which pieces may be taken.</param>
    public byte[] Change(byte[] input, byte[] other)
    {
        var changed = input;
        for (var left = random.Next(1, MostChanges + 1); left > 0; left--)
            changed = Change(changed, other, random.Next(_changes.Count));
        return changed;
    }

    /// <summary>An input changed in one way.</summary>
    /// <param name="input">The input.</param>
    /// <param name="other">Another.</param>
    /// <param name="kind">Which way, from 0.</param>
    public byte[] Change(byte[] input, byte[] other, int kind) => _changes[kind](input, other) is var changed && changed.Length > mostBytes ? changed[..mostBytes] : changed;
}
