using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Where a lead touches the energised machine.</summary>
/// <param name="Point">In words.</param>
/// <param name="Node">Node of the wiring network.</param>
internal sealed record LivePlace(CheckPoint Point, int Node)
{
    /// <summary>For identifiers.</summary>
    public string Id => Slug.Of($"{Point.Subject}.{Point.Place}");

    /// <summary>A terminal with everything plugged: at the conductor, or from behind at the contact in the plug.</summary>
    public static LivePlace Mated(WiringContext context, TerminalReference terminal) =>
        new(new CheckPoint(terminal.Part, terminal.Terminal, ""), context.Wiring.LandingNode(terminal));

    /// <summary>The pin of a terminal whose plug is pulled.</summary>
    public static LivePlace Pin(WiringContext context, TerminalReference terminal) =>
        new(new CheckPoint(terminal.Part, terminal.Terminal, "pins"), context.Wiring.TerminalNode(terminal));
}
