namespace Proveout.Workshop;

/// <summary>What one kind of measurement at a frame says.</summary>
internal sealed record FramePart(
    IReadOnlyList<SheetFigure> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, bool IsFine);
