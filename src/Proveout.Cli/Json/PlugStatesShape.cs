using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a meter shows between two terminals in every state of the plugs.</summary>
internal sealed record PlugStatesShape(string Format, string Machine, double? ShownOhms, bool ShownIsOverRange, string Verdict, IReadOnlyList<PlugStateShape> States)
{
    public static PlugStatesShape Of(string machine, PlugStateAnswer answer) => new(
        "proveout-readings-by-plug-state 1",
        machine,
        answer.ShownOhms is { } ohms ? IntervalShape.ValueOf(ohms) : null,
        answer.ShownOhms is double.PositiveInfinity,
        answer.Verdict,
        [.. answer.States.Select(PlugStateShape.Of)]);
}

/// <summary>One state of the plugs.</summary>
internal sealed record PlugStateShape(SetUpShape SetUp, bool? Fits, IReadOnlyList<ExpectedReadingShape> Readings)
{
    public static PlugStateShape Of(PlugStateReading state) => new(
        SetUpShape.Of(state.Both.SetUp),
        state.Fits,
        [ExpectedReadingShape.Of(state.Both.One), ExpectedReadingShape.Of(state.Both.Other)]);
}
