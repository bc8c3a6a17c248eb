using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The node that a lead is on when it touches a place.</summary>
internal static class ProbeNodes
{
    /// <summary>The side of a check point that means the pin of a connector that is apart.</summary>
    public const string Pins = "pins";

    /// <summary>The node of a place.</summary>
    /// <exception cref="KeyNotFoundException">The machine has no such terminal.</exception>
    public static int Of(WiringNetwork wiring, CheckPoint point)
    {
        var terminal = new TerminalReference(point.Subject, point.Place);
        return point.Side == Pins ? wiring.TerminalNode(terminal) : wiring.LandingNode(terminal);
    }
}
