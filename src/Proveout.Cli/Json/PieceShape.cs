using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a first test piece says.</summary>
internal sealed record PieceShape(
    string Format,
    bool IsFine,
    IReadOnlyList<MeasuredFigureShape> Figures,
    IReadOnlyList<string> Findings,
    IReadOnlyList<string> Steps,
    IReadOnlyList<string> Remarks,
    IReadOnlyList<PieceLengthShape> Lengths)
{
    public static PieceShape Of(PieceAnswer answer)
    {
        var sheet = MeasurementShape.Of("proveout-piece 1", answer.Sheet);
        return new(sheet.Format, sheet.IsFine, sheet.Figures, sheet.Findings, sheet.Steps, sheet.Remarks, [.. answer.Lengths.Select(PieceLengthShape.Of)]);
    }
}

/// <summary>A measured length of it.</summary>
internal sealed record PieceLengthShape(int Measure, string Words, double DrawnMillimetres, double ReadMillimetres, UncertainShape AfterMillimetres)
{
    public static PieceLengthShape Of(PieceLengthView length) => new(length.Number, length.Words, length.DrawnMm, length.ReadMm, UncertainShape.Of(length.After));
}
