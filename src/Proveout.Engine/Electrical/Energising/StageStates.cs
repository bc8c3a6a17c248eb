namespace Proveout.Engine.Electrical;

/// <summary>The states of the controls that stages try.</summary>
internal sealed class StageStates(LiveModel model)
{
    /// <summary>Main switch off; null when there is none.</summary>
    public ControlState? Off { get; } = model.States.FirstOrDefault(state => state.Kind == ControlStateKind.Off);

    /// <summary>Switched on, nothing commanded.</summary>
    public ControlState Idle { get; } = model.States.First(state => state.Kind == ControlStateKind.Idle);

    /// <summary>Every output commanded; null when there is none.</summary>
    public ControlState? All { get; } = model.States.FirstOrDefault(state => state.Kind == ControlStateKind.AllOutputs);

    /// <summary>Switched on and started, nothing commanded.</summary>
    public IReadOnlyList<ControlState> Quiet => [Idle, .. model.States.Where(state => state.Kind == ControlStateKind.Running).TakeLast(1)];

    /// <summary>Nothing commanded, then everything.</summary>
    public IReadOnlyList<ControlState> Loaded => [.. Quiet, .. All is { } all ? new[] { all } : []];
}
