using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A first test piece, ready to be made.</summary>
internal sealed record PieceFilesShape(string Format, string Title, string Room, IReadOnlyList<PieceMeasureShape> Measures, IReadOnlyList<string> Files)
{
    public static PieceFilesShape Of(PieceFilesView piece, IReadOnlyList<string> files) => new(
        "proveout-piece-files 1", piece.Title, piece.Room, [.. piece.Measures.Select(measure => new PieceMeasureShape(measure.Number, measure.Words, measure.IsInside ? "inside" : "outside", measure.DrawnMm))], files);
}

/// <summary>A numbered measure of it.</summary>
internal sealed record PieceMeasureShape(int Number, string Words, string Jaws, double DrawnMillimetres);
