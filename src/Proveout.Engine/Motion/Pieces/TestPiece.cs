namespace Proveout.Engine.Motion;

/// <summary>
/// A test piece of our own, made of parts that each answer one question (what a test artefact should ask: ISO/ASTM 52902, in words only):
/// a double ring for size and squareness in the plane, upright parts for squareness to the plate, a stair for heights, a single wall for flow,
/// a row of leaning fingers for overhang.
/// </summary>
/// <param name="Size">Its sizes.</param>
/// <param name="Parts">Its parts.</param>
public sealed record TestPiece(TestPieceSize Size, IReadOnlyList<PiecePart> Parts)
{
    /// <summary>Everything that is measured with a calliper for size, in the order of the numbers.</summary>
    public IReadOnlyList<PieceMeasure> Measures => [.. Parts.SelectMany(part => part.Measures)];

    /// <summary>Angles of the leaning fingers from upright, in degrees, from the left.</summary>
    public static IReadOnlyList<int> Leans => FingerRow.Leans;

    /// <summary>The piece of some size.</summary>
    public static TestPiece Of(TestPieceSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var (ring, upright, gap) = (size.RingMm, size.UprightMm, TestPieceSize.GapMm);
        var behind = ring + gap;
        var row = behind + (0.2 * upright) + gap;
        return new(size, size.Making switch
        {
            PieceMaking.Printed =>
            [
                DoubleRing.Of(size),
                UprightPart.AlongX(size, new(0, row, 0), 17),
                UprightPart.AlongY(size, new(upright + gap, row, 0), 22),
                Stair.Of(size, new(0, row + (0.3 * upright) + gap, 0), 27),
                SingleWall.Of(size, new((1.3 * upright) + (2 * gap), row, 0), 0.5 * upright),
                FingerRow.Of(size, new(0, behind, 0)),
            ],
            PieceMaking.Milled => [DoubleRing.Of(size), Stair.Of(size, new(0, behind, 0), 27)],
            _ => [DoubleRing.Of(size), SingleWall.Of(size, new(0, behind, 0), 0.2 * upright)],
        });
    }
}
