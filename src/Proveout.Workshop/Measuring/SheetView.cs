namespace Proveout.Workshop;

/// <summary>What came of measurements, in figures and in plain words.</summary>
/// <param name="Figures">The figures that matter.</param>
/// <param name="Findings">What they mean, a sentence each.</param>
/// <param name="Steps">What to do, in order; empty when nothing is to be done.</param>
/// <param name="Remarks">What to mind about the measurements themselves.</param>
/// <param name="IsFine">True when everything that was measured is surely as it should be.</param>
public sealed record SheetView(
    IReadOnlyList<SheetFigure> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, bool IsFine)
{
    /// <summary>What was seen besides, and what explains it; null when nobody said anything.</summary>
    public SeenView? Seen { get; init; }

    /// <summary>What a controller is to be told because of it; empty for most.</summary>
    public IReadOnlyList<SheetFigure> ToSet { get; init; } = [];

    /// <summary>Drawings of it; empty for most.</summary>
    public IReadOnlyList<SheetDrawing> Drawings { get; init; } = [];

    /// <summary>Plots of it; empty for most.</summary>
    public IReadOnlyList<PlotView> Plots { get; init; } = [];
}

/// <summary>A figure with a name.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Figure">Value and expanded uncertainty; the latter is 0 when it is not known.</param>
public sealed record SheetFigure(string Name, string Unit, FigureView Figure);
