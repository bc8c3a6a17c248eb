using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A line of a part's page: a terminal, and a conductor that lands on it.</summary>
/// <param name="Terminal">The terminal.</param>
/// <param name="Conductor">The conductor; null when none lands here.</param>
/// <param name="Other">Its other end; null as well.</param>
internal sealed record PartRow(string Terminal, Conductor? Conductor, TerminalReference? Other)
{
    /// <summary>The lines of one terminal.</summary>
    public static IEnumerable<PartRow> Of(MachineDesign design, TerminalReference terminal)
    {
        var landing = design.Conductors.Where(each => each.From == terminal || each.To == terminal)
            .Select(each => new PartRow(terminal.Terminal, each, each.From == terminal ? each.To : each.From))
            .ToList();
        return landing.Count > 0 ? landing : [new(terminal.Terminal, null, null)];
    }
}
