namespace Proveout.Workshop;

/// <summary>What one kind of measurement at a frame says.</summary>
internal sealed record FramePart(
    IReadOnlyList<SheetFigure> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, bool IsFine)
{
    /// <summary>Drawings of it; empty for most.</summary>
    public IReadOnlyList<SheetDrawing> Drawings { get; init; } = [];

    /// <summary>Plots of it; empty for most.</summary>
    public IReadOnlyList<PlotView> Plots { get; init; } = [];

    /// <summary>Several parts on one sheet.</summary>
    public static SheetView Sheet(IReadOnlyList<FramePart> parts) => new(
        [.. parts.SelectMany(part => part.Figures)],
        [.. parts.SelectMany(part => part.Findings)],
        [.. parts.SelectMany(part => part.Steps)],
        [.. parts.SelectMany(part => part.Remarks)],
        parts.All(part => part.IsFine))
    {
        Drawings = [.. parts.SelectMany(part => part.Drawings)],
        Plots = [.. parts.SelectMany(part => part.Plots)],
    };
}
