namespace Proveout.Workshop;

/// <summary>What one way of looking at a log says.</summary>
internal sealed record HeatLogPart(
    IReadOnlyList<SheetFigure> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, bool IsFine, IReadOnlyList<PlotView> Plots)
{
    /// <summary>Says nothing.</summary>
    public static HeatLogPart Nothing { get; } = new([], [], [], [], true, []);
}
