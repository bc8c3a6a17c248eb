namespace Proveout.Engine.Electrical;

/// <summary>Currents of conductors in the sound machine.</summary>
public static class ConductorCurrents
{
    /// <summary>What each conductor carries in a state.</summary>
    public static IReadOnlyList<ConductorCurrent> Of(LiveModel model, ControlState state)
    {
        ArgumentNullException.ThrowIfNull(model);
        var solution = model.Sound(state);
        return
        [
            .. model.Context.Design.Conductors.Select(conductor => new ConductorCurrent(
                conductor.Id, conductor.From, conductor.To, solution.HeatingAmperes(model.Context.JointOf(conductor, conductor.To).Index))),
        ];
    }
}
