using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>The walk round a machine.</summary>
internal sealed record WalkShape(string Format, string Machine, int Observed, int Uncaught, int Shown, IReadOnlyList<SetUpShape> SetUps, IReadOnlyList<WalkCheckShape> Checks)
{
    public static WalkShape Of(WalkView view) => new(
        "proveout-walk 1",
        view.Machine.Name,
        view.Observed,
        view.Uncaught,
        view.Shown,
        [.. view.Places.Select(place => SetUpShape.Of(place.SetUp))],
        [.. view.Places.SelectMany(place => place.Checks.Select(check => new WalkCheckShape(
            check.Check.Id, place.SetUp.Id, check.Check.Kind, check.Check.Title, check.Check.Instruction, check.Expected, check.Shows)))]);
}

/// <summary>One thing to look at.</summary>
internal sealed record WalkCheckShape(string Id, string SetUp, string Kind, string Title, string Instruction, string ExpectedWords, int Shows);
