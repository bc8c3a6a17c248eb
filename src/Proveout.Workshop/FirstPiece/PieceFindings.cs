namespace Proveout.Workshop;

/// <summary>What one kind of measurement at a test piece says.</summary>
internal sealed record PieceFindings(
    IReadOnlyList<SheetFigure> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, bool IsFine);
