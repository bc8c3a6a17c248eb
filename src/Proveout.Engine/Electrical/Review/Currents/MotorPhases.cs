using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Finds the winding on each output that holds a current.</summary>
internal static class MotorPhases
{
    public static IEnumerable<MotorPhase> Of(ReviewContext context)
    {
        var windings = context.Wiring.Elements
            .Where(element => element is { Part: Resistor, IsMetal: false })
            .Where(element => context.TerminalAt(element.A)?.Role == TerminalRole.Winding || context.TerminalAt(element.B)?.Role == TerminalRole.Winding)
            .SelectMany(element => new[] { (element.A, element), (element.B, element) })
            .ToLookup(end => end.Item1, end => end.element);
        foreach (var part in context.Design.Parts)
            foreach (var output in part.Type.Circuit.OfType<HeldCurrent>())
                if (context.FindNode(part.Designation, output.A) is { } node)
                    foreach (var winding in context.JoinedTo(node, element => !element.IsMetal).SelectMany(at => windings[at]).Distinct())
                        yield return new(part, output, winding);
    }
}
