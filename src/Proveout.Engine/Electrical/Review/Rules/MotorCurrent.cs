namespace Proveout.Engine.Electrical;

/// <summary>The current that a driver holds is borne by the motor and by the driver's output, and is not far below what the motor is made for.</summary>
internal sealed class MotorCurrent : IReviewRule
{
    // Run current is 60 to 80 % of the rated one; below a third the motor hardly pulls. Common practice.
    private const double WeakShare = 0.33;

    public string Id => "motor-current";

    public string Words => "current of motor drivers against motor and output";

    public IEnumerable<Finding> Review(ReviewContext context) => context.MotorPhases
        .GroupBy(phase => (phase.Winding.Subject, phase.Driver.Designation, phase.Output.Command))
        .Select(phases => phases.MaxBy(phase => phase.Output.Current.Amperes)!)
        .SelectMany(phase => Of(context, phase));

    private IEnumerable<Finding> Of(ReviewContext context, MotorPhase phase)
    {
        var held = phase.Output.Current.Amperes;
        if (context.TerminalAt(context.FindNode(phase.Driver.Designation, phase.Output.A)!.Value)?.Current?.Amperes is { } output && held > output)
            yield return Found(phase, FindingSeverity.Error, $"bears {ReviewContext.Number(output, 2)} A", output, "Lower the current, or take a stronger driver.");
        if ((context.TerminalAt(phase.Winding.A) ?? context.TerminalAt(phase.Winding.B))?.Current?.Amperes is not { } rated)
            yield break;
        if (held > rated)
            yield return Found(phase, FindingSeverity.Error, $"drives {phase.Winding.Subject}, which bears {ReviewContext.Number(rated, 2)} A: it overheats", rated, "Lower the current of the driver, or take a stronger motor.");
        else if (held < WeakShare * rated)
            yield return Found(phase, FindingSeverity.Note, $"drives {phase.Winding.Subject}, which is made for {ReviewContext.Number(rated, 2)} A: it is weak", rated, "Raise the current, or take a driver for this motor.");
    }

    private Finding Found(MotorPhase phase, FindingSeverity severity, string what, double limit, string fix) => new(
        Id,
        severity,
        [phase.Driver.Designation, phase.Winding.Subject],
        $"Output {phase.Output.Command} of {phase.Driver.Designation} holds {ReviewContext.Number(phase.Output.Current.Amperes, 2)} A and {what}.",
        fix,
        "ratings from the part types; run current 60 to 80 % of the rated one, common practice")
    {
        Numbers = [new("current", phase.Output.Current.Amperes, "A"), new("rated current", limit, "A")],
    };
}
