using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a log of a heater says.</summary>
internal sealed record HeatLogShape(
    string Format,
    bool IsFine,
    IReadOnlyList<string> What,
    IReadOnlyList<MeasuredFigureShape> Figures,
    IReadOnlyList<string> Findings,
    IReadOnlyList<string> Steps,
    IReadOnlyList<string> Remarks,
    IReadOnlyList<FailedReadingShape> Failed,
    IReadOnlyList<SuspectShape> Suspects,
    double Unknown,
    IReadOnlyList<LoopSettingsView> Settings,
    GuardView? Guard,
    IReadOnlyList<ComparedFigureShape> Compared)
{
    public static HeatLogShape Of(HeatLogView view) => new(
        "proveout-heat-log 1",
        view.Sheet.IsFine,
        view.What,
        [.. view.Sheet.Figures.Select(figure => new MeasuredFigureShape(figure.Name, figure.Unit, UncertainShape.Of(figure.Figure)))],
        view.Sheet.Findings,
        view.Sheet.Steps,
        view.Sheet.Remarks,
        [.. view.Diagnosis?.Failed.Select(failed => new FailedReadingShape(failed.Check.Id, failed.Shown, failed.Expected)) ?? []],
        [.. view.Diagnosis?.Suspects.Select(SuspectShape.Of) ?? []],
        view.Diagnosis?.Unknown ?? 0,
        view.Settings,
        view.Guard,
        [.. view.Compared.Select(figure => new ComparedFigureShape(figure.Name, UncertainShape.Of(figure.Before), UncertainShape.Of(figure.After), UncertainShape.Of(figure.Difference), figure.IsBeyondNoise))]);
}

/// <summary>A figure of two logs.</summary>
internal sealed record ComparedFigureShape(string Name, UncertainShape Before, UncertainShape After, UncertainShape Difference, bool IsBeyondNoise);
