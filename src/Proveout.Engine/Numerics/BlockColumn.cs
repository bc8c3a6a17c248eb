namespace Proveout.Engine.Numerics;

/// <summary>Volts of each node of a block for one ampere fed into one of them and taken from its top, by the places of <see cref="Bridges.PlaceIn"/>.</summary>
/// <remarks>Double-doubles with their two parts in arrays of their own, so that one load takes those of several nodes.</remarks>
internal sealed class BlockColumn
{
    /// <summary>Takes the volts of the nodes beside the top, which has none.</summary>
    public BlockColumn(ReadOnlySpan<DoubleDouble> volts)
    {
        (High, Low) = (new double[volts.Length + 1], new double[volts.Length + 1]);
        for (var node = 0; node < volts.Length; node++)
            (High[node + 1], Low[node + 1]) = (volts[node].High, volts[node].Low);
    }

    /// <summary>The leading parts.</summary>
    public double[] High { get; }

    /// <summary>What the leading parts leave out.</summary>
    public double[] Low { get; }

    /// <summary>Volts at a place.</summary>
    public DoubleDouble this[int place] => new(High[place], Low[place]);
}
