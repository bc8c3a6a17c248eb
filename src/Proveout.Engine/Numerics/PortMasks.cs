namespace Proveout.Engine.Numerics;

/// <summary>For each island of a network a bit for every port, set when the island holds one of the port's nodes.</summary>
internal sealed class PortMasks
{
    private const int BitsAWord = 64;

    private readonly ulong[]?[] _maskOfIsland;

    /// <summary>Sets the bits of some ports.</summary>
    /// <param name="ports">All ports.</param>
    public PortMasks(Ports ports)
    {
        _maskOfIsland = new ulong[]?[ports.Network.Islands.Count];
        WordCount = (ports.Pairs.Length + BitsAWord - 1) / BitsAWord;
        for (var port = 0; port < ports.Pairs.Length; port++)
        {
            Set(ports.Islands[ports.Pairs[port].A], port);
            Set(ports.Islands[ports.Pairs[port].B], port);
        }
    }

    /// <summary>Number of words of 64 bits in a mask; port 0 is the lowest bit of the first.</summary>
    public int WordCount { get; }

    /// <summary>Sets the bits of all ports of some islands.</summary>
    public void Add(List<int> islands, Span<ulong> mask)
    {
        foreach (var island in islands)
            if (_maskOfIsland[island] is { } ofIsland)
                for (var word = 0; word < ofIsland.Length; word++)
                    mask[word] |= ofIsland[word];
    }

    private void Set(int island, int port) => (_maskOfIsland[island] ??= new ulong[WordCount])[port / BitsAWord] |= 1UL << (port % BitsAWord);
}
