namespace Proveout.Engine.Electrical;

/// <summary>Room for what touches each piece of a network, used again from fault to fault by one thread.</summary>
internal sealed class StrayRoom
{
    private double[] _leakage = [];
    private int[] _rootOf = [];
    private double[] _leastVolts = [];

    /// <summary>Room for a number of pieces, each without leakage, on its own and away from every junction; what was taken before is overwritten.</summary>
    public (double[] Leakage, int[] RootOf, double[] LeastVolts) Take(int pieceCount)
    {
        if (_rootOf.Length < pieceCount)
            (_leakage, _rootOf, _leastVolts) = (new double[pieceCount], new int[pieceCount], new double[pieceCount]);
        Array.Clear(_leakage, 0, pieceCount);
        Array.Fill(_leastVolts, double.PositiveInfinity, 0, pieceCount);
        for (var piece = 0; piece < pieceCount; piece++)
            _rootOf[piece] = piece;
        return (_leakage, _rootOf, _leastVolts);
    }
}
