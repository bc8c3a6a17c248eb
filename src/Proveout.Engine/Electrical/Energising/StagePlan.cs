namespace Proveout.Engine.Electrical;

/// <summary>What a stage is about, before it is worked out: which gates open, which states of the controls are tried.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Closed">Gates that are closed at this stage and were not before.</param>
/// <param name="Apart">Gates that are still open.</param>
/// <param name="States">States of the controls that are tried.</param>
internal sealed record StagePlan(string Title, IReadOnlyList<Gate> Closed, IReadOnlyList<Gate> Apart, IReadOnlyList<ControlState> States)
{
    /// <summary>True when outputs are commanded while their loads are still apart.</summary>
    public bool TriesOutputs => Closed.Count == 0 && States.Any(state => state.Kind == ControlStateKind.AllOutputs);

    /// <summary>The same for the live model.</summary>
    public LiveStage Stage { get; } = new(Title, Apart.SelectMany(gate => gate.Elements).ToHashSet(), States);
}
