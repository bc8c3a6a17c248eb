namespace Proveout.Engine.Motion;

/// <summary>Where a peak stands in a spectrum.</summary>
/// <param name="Bin">Its top.</param>
/// <param name="From">First bin that belongs to it rather than to its neighbour.</param>
/// <param name="To">Last one.</param>
/// <param name="Excess">How many times its top stands above the higher of the two dips beside it.</param>
internal sealed record PeakPlace(int Bin, int From, int To, double Excess);
