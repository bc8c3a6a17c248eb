namespace Proveout.Engine.Electrical;

/// <summary>How much otherwise junctions and insulation touch a piece than they touched the island that it is of.</summary>
internal readonly struct StrayShift
{
    private readonly bool _isInGroup;
    private readonly double _mostOhms;
    private readonly double _movedSiemens;
    private readonly double _freeToOhms;
    private readonly double _clippedFromOhms;

    /// <summary>Compares them.</summary>
    /// <param name="before">What touched the islands.</param>
    /// <param name="island">The island.</param>
    /// <param name="now">What touches the pieces.</param>
    /// <param name="piece">The piece, numbered on after the islands.</param>
    /// <param name="amperes">The meter's current, with which a junction clips what it reads.</param>
    public StrayShift(StrayPieces before, int island, StrayPieces now, int piece, double amperes)
    {
        _isInGroup = before.RootOf(island) == now.RootOf(piece);
        _mostOhms = Math.Max(before.LeastOhms(double.PositiveInfinity, island), now.LeastOhms(double.PositiveInfinity, piece));
        _movedSiemens = Math.Abs(now.LeakageOf(piece) - before.LeakageOf(island));
        var (clip, clipNow) = (before.LeastVoltsOf(island) / amperes, now.LeastVoltsOf(piece) / amperes);
        var mostSiemens = Math.Max(before.LeakageOf(island), now.LeakageOf(piece));
        _freeToOhms = clip.Equals(clipNow) ? double.PositiveInfinity : Math.Min(clip, clipNow);
        _clippedFromOhms = clip.Equals(clipNow) && mostSiemens < 1 / clip ? 1 / ((1 / clip) - mostSiemens) : double.PositiveInfinity;
    }

    /// <summary>False when an open port with one lead on the piece surely reads as before, for the current has to pass from the piece of its other lead.</summary>
    /// <param name="besideOhms">Least that junctions and insulation leave of an open port at the piece of the other lead, which the change leaves alone; infinite when they join it to nothing here.</param>
    public bool MovesOpen(double besideOhms) => !_isInGroup || besideOhms <= _mostOhms;

    /// <summary>False when a port with both leads on the piece surely reads as before.</summary>
    /// <remarks>1/(1/R + G) moves by R²|ΔG| at most; where a junction clips it before and after, not at all.</remarks>
    /// <param name="ohms">Its resistance, as it was.</param>
    /// <param name="unseenSiemens">Conductance beside it that no one could tell.</param>
    public bool Moves(double ohms, double unseenSiemens) => (_movedSiemens > unseenSiemens && ohms <= _clippedFromOhms) || ohms > _freeToOhms;
}
