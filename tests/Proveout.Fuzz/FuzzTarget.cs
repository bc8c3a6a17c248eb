namespace Proveout.Fuzz;

/// <summary>Something that reads what others wrote.</summary>
/// <param name="Name">Its name, and that of its folder of inputs under tests/cases/fuzz.</param>
/// <param name="Read">
/// Reads an input and says in a few words what came of it, such as the rules that refused it. Whatever it throws is a failure: refusals by design are
/// words here.
/// </param>
public sealed record FuzzTarget(string Name, Func<byte[], string> Read)
{
    /// <summary>Pieces that the form of these inputs gives a meaning to.</summary>
    public IReadOnlyList<byte[]> Tokens { get; init; } = [];

    /// <summary>Changes an input by its inner form, so that the change lies behind what a changed byte would be stopped at; null when there is no such form.</summary>
    public Func<Mutator, byte[], byte[], byte[]>? ChangeInside { get; init; }

    /// <summary>Largest input that is made, in bytes.</summary>
    public int MostBytes { get; init; } = 64 * 1024;

    /// <summary>What may be allocated for one input, in bytes.</summary>
    public long MostAllocated { get; init; } = 256L << 20;
}
