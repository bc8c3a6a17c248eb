using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What came of measurements at a frame or a plate.</summary>
internal sealed record MeasurementShape(
    string Format, bool IsFine, IReadOnlyList<MeasuredFigureShape> Figures, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks)
{
    public static MeasurementShape Of(string format, SheetView view) => new(
        format,
        view.IsFine,
        [.. view.Figures.Select(figure => new MeasuredFigureShape(figure.Name, figure.Unit, UncertainShape.Of(figure.Figure)))],
        view.Findings,
        view.Steps,
        view.Remarks);
}

/// <summary>A figure with its name.</summary>
internal sealed record MeasuredFigureShape(string Name, string Unit, UncertainShape Figure);
