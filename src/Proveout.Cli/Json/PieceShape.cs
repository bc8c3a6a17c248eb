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
    IReadOnlyList<PieceLengthShape> Lengths,
    IReadOnlyList<PieceDoubtShape> Doubts,
    long? Kept)
{
    public static PieceShape Of(PieceAnswer answer, long? kept)
    {
        var sheet = MeasurementShape.Of("proveout-piece 1", answer.Sheet, [], kept);
        return new(sheet.Format, sheet.IsFine, sheet.Figures, sheet.Findings, sheet.Steps, sheet.Remarks, [.. answer.Lengths.Select(PieceLengthShape.Of)], [.. answer.Doubts.Select(PieceDoubtShape.Of)], kept);
    }
}

/// <summary>A measured length of it.</summary>
internal sealed record PieceLengthShape(int Measure, string Words, double DrawnMillimetres, double ReadMillimetres, UncertainShape AfterMillimetres)
{
    public static PieceLengthShape Of(PieceLengthView length) => new(length.Number, length.Words, length.DrawnMm, length.ReadMm, UncertainShape.Of(length.After));
}

/// <summary>What the doubt of a figure is made of.</summary>
internal sealed record PieceDoubtShape(string Name, string Unit, double Degrees, IReadOnlyList<PieceCauseShape> Causes)
{
    public static PieceDoubtShape Of(PieceDoubtView doubt) => new(doubt.Name, doubt.Unit, doubt.Degrees, [.. doubt.Causes.Select(cause => new PieceCauseShape(cause.Cause, cause.Standard))]);
}

/// <summary>A cause of it.</summary>
internal sealed record PieceCauseShape(string Cause, double Standard);
