namespace Proveout.Engine.Motion;

/// <summary>What a sweep keeps while its frequency rises, and how it rises: what the spectrum is divided by to become a transfer.</summary>
/// <param name="PowerOfFrequency">The spectrum of the excitation's acceleration rises with this power of the frequency.</param>
public readonly record struct SweepKind(double PowerOfFrequency)
{
    /// <summary>A sweep that keeps its acceleration, its speed or its travel; at so many Hz a second, or at so many octaves a second.</summary>
    /// <param name="kept">0 for acceleration, 1 for speed, 2 for travel: how often the acceleration is its derivative.</param>
    /// <param name="byOctaves">True when it rises by octaves: it then stays ever shorter at each frequency, in proportion to 1 over it.</param>
    public static SweepKind Keeping(int kept, bool byOctaves) => new((2 * kept) - (byOctaves ? 1 : 0));

    /// <summary>The spectrum as a transfer: what an excitation alike at all frequencies would have left, with the same value at a frequency.</summary>
    /// <param name="density">The measured one.</param>
    /// <param name="atHertz">Where both are the same.</param>
    public PowerDensity Transfer(PowerDensity density, double atHertz)
    {
        var power = PowerOfFrequency;
        double[] Level(IReadOnlyList<double> values) => [.. values.Select((value, bin) => bin == 0 ? 0 : value * Math.Pow(atHertz / (bin * density.BinHertz), power))];
        return power == 0 ? density : density with { Values = Level(density.Values), Highest = Level(density.Highest) };
    }
}
