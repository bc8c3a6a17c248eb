using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>No metal that a person can touch is felt to be live.</summary>
/// <remarks>
/// Nothing is felt below 10 V AC, from memory well below the 25 V of IEC 60364-4-41 clause 414; above 30 V, even through filter capacitors, sliding
/// the back of a finger is felt as a vibration (common practice). Between them it cannot be told.
/// </remarks>
internal sealed class MetalDoesNotTingle : ILiveCheckRule
{
    private const double NothingTo = 10;
    private const double FeltFrom = 30;
    private const int Earth = -1;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from metal in checks.Model.Mains is null ? [] : Metal(checks.Model.Context)
        from state in new[] { checks.Resting, checks.Everything }.Distinct()
        from observation in checks.Symptom(
            $"tingle {metal.Part.Designation} {(state == checks.Resting ? "switch-on" : "all-on")}",
            $"nobody has felt a tingle at {LoadWords.Of(metal.Part)} (do not touch to find out: measure)",
            state,
            "Its metal is bonded to the protective conductor.",
            view => Seen.Low(view.AlternatingVolts(checks.Model.Context.Wiring.TerminalNode(metal.Terminal), Earth), NothingTo, FeltFrom),
            Seen.Right)
        select observation;

    /// <summary>The bare metal of every exposed conductive part.</summary>
    public static IEnumerable<(Part Part, TerminalReference Terminal)> Metal(WiringContext context) =>
        from part in context.Design.Parts
        where part.Type.ExposedConductivePart
        let terminal = part.Type.Terminals.LastOrDefault(terminal => terminal.Role == TerminalRole.ProtectiveEarth && terminal.Reachable)
        where terminal is not null
        select (part, new TerminalReference(part.Designation, terminal.Name));
}
