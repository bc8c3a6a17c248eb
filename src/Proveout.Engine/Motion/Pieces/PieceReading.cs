namespace Proveout.Engine.Motion;

/// <summary>What a measure of the test piece was read as.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Millimetres">Mean of the readings without the known errors of the calliper.</param>
public sealed record PieceReading(PieceMeasure Measure, double Millimetres);
