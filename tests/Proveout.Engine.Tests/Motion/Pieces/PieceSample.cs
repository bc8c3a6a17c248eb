using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Pieces and readings for the tests.</summary>
internal static class PieceSample
{
    public static readonly Calliper Plain = Calliper.Unchecked(0.01, 0.02);

    public static TestPiece Piece(PieceMaking making = PieceMaking.Printed, double ring = 100) => TestPiece.Of(new(making, ring, 0.4 * ring, 5, 0.45));

    public static PieceDoubt Doubt(Calliper? calliper = null, double repeat = 0.02, double warmth = 0) => new(calliper ?? Plain, repeat, warmth);

    public static PieceReading[] Readings(TestPiece piece, PieceDistortion distortion, double walls, Func<PieceMeasure, double>? error = null, Func<PieceMeasure, bool>? taken = null) =>
    [
        .. piece.Measures.Where(measure => taken?.Invoke(measure) ?? true).Select(measure => new PieceReading(
            measure, distortion.Between(measure.Facing, measure.NominalMm) + (measure.Growth == PieceGrowth.Walls ? measure.GrowthSign * walls : 0) + (error?.Invoke(measure) ?? 0))),
    ];

    public static bool IsRing(PieceMeasure measure) => measure.Number <= 16;

    /// <summary>Normal with mean 0 (Box and Muller).</summary>
    public static double Normal(Random random, double deviation) =>
        deviation * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>Uniform within a half-width.</summary>
    public static double Within(Random random, double halfWidth) => halfWidth * ((2 * random.NextDouble()) - 1);
}
