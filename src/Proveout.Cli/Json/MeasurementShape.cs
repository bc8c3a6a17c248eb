using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What came of measurements at a frame or a plate.</summary>
internal sealed record MeasurementShape(
    string Format, bool IsFine, IReadOnlyList<MeasuredFigureShape> Figures, IReadOnlyList<MeasuredFigureShape> ToSet, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks, IReadOnlyList<string> Files, SeenShape? Seen, long? Kept)
{
    public static MeasurementShape Of(string format, SheetView view, IReadOnlyList<string> files, long? kept) => new(
        format,
        view.IsFine,
        Shapes(view.Figures),
        Shapes(view.ToSet),
        view.Findings,
        view.Steps,
        view.Remarks,
        files,
        view.Seen is { } seen ? SeenShape.Of(seen) : null,
        kept);

    private static MeasuredFigureShape[] Shapes(IReadOnlyList<SheetFigure> figures) =>
        [.. figures.Select(figure => new MeasuredFigureShape(figure.Name, figure.Unit, UncertainShape.Of(figure.Figure)))];
}

/// <summary>A figure with its name.</summary>
internal sealed record MeasuredFigureShape(string Name, string Unit, UncertainShape Figure);
