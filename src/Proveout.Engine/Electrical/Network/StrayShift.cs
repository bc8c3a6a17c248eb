namespace Proveout.Engine.Electrical;

/// <summary>How much otherwise junctions and insulation touch a piece than they touched the island that it is of.</summary>
internal readonly struct StrayShift
{
    private readonly bool _isInGroup;
    private readonly double _mostOhms;
    private readonly double _movedSiemens;
    private readonly double _clipOhms;

    /// <summary>Compares them.</summary>
    /// <param name="before">What touched the islands.</param>
    /// <param name="island">The island.</param>
    /// <param name="now">What touches the pieces.</param>
    /// <param name="piece">The piece, numbered on after the islands.</param>
    public StrayShift(StrayPieces before, int island, StrayPieces now, int piece)
    {
        _isInGroup = before.RootOf(island) == now.RootOf(piece);
        _mostOhms = Math.Max(before.LeastOhms(double.PositiveInfinity, island), now.LeastOhms(double.PositiveInfinity, piece));
        _movedSiemens = Math.Abs(now.LeakageOf(piece) - before.LeakageOf(island));
        _clipOhms = before.LeastVoltsOf(island).Equals(now.LeastVoltsOf(piece))
            ? double.PositiveInfinity
            : Math.Min(before.LeastVoltsOf(island), now.LeastVoltsOf(piece)) / ElementBand.TestCurrentAmperes;
    }

    /// <summary>False when an open port with one lead on the piece surely reads as before, for the current has to pass from the piece of its other lead.</summary>
    /// <param name="besideOhms">Least that junctions and insulation leave of an open port at the piece of the other lead, which the change leaves alone; infinite when they join it to nothing here.</param>
    public bool MovesOpen(double besideOhms) => !_isInGroup || besideOhms <= _mostOhms;

    /// <summary>False when a port with both leads on the piece surely reads as before.</summary>
    /// <remarks>1/(1/R + G) moves by R²|ΔG| at most, and what a junction clips by no more.</remarks>
    /// <param name="ohms">Its resistance, as it was.</param>
    /// <param name="unseenSiemens">Conductance beside it that no one could tell.</param>
    public bool Moves(double ohms, double unseenSiemens) => _movedSiemens > unseenSiemens || ohms > _clipOhms;
}
