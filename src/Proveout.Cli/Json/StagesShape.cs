using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A machine that is built in stages.</summary>
internal sealed record StagesShape(string Format, string Machine, string First, int Checks, double Minutes, IReadOnlyList<FittedLaterShape> Fittings)
{
    public static StagesShape Of(StagesView view) => new(
        "proveout-stages 1", view.Machine.Name, view.First.Id, view.Checks, Math.Round(view.Minutes, 1), [.. view.Fittings.Select(FittedLaterShape.Of)]);
}

/// <summary>What to do after something was fitted.</summary>
internal sealed record FittedLaterShape(string Name, string Note, IReadOnlyList<string> Parts, MistakeTableShape Mistakes, IReadOnlyList<string> Tugs, IReadOnlyList<string> Again)
{
    public static FittedLaterShape Of(FittedLater fitting) => new(
        fitting.Name, fitting.Note, fitting.Parts, MistakeTableShape.Of(fitting.Table), fitting.Tugs, fitting.Again);
}
