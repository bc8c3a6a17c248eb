using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What was seen, and what explains it.</summary>
internal sealed record SeenShape(IReadOnlyList<string> Reported, IReadOnlyList<SuspectShape> Suspects, double Unknown, CheckShape? NextCheck)
{
    public static SeenShape Of(SeenView view) => new(view.Reported, [.. view.Suspects.Select(SuspectShape.Of)], view.Unknown, view.Next is { } next ? CheckShape.Of(next) : null);
}
