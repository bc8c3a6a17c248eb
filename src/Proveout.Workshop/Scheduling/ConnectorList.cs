using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>How many plugs of which family and size the conductors need.</summary>
internal sealed class ConnectorList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var plugs = PlugsOf(request.Design).ToArray();
        return new(
            "connectors",
            "Plugs",
            "Plugs that conductors of this machine go into. Like plugs of one family and size can be exchanged by mistake: label them before anything is mated.",
            [new("Family", 1.2), new("Poles", 0.6), new("Count", 0.6), new("Contacts used", 1), new("Where", 4)],
            [
                .. plugs
                    .GroupBy(plug => (plug.Connector.Family, plug.Connector.Terminals.Count))
                    .OrderBy(group => group.Key.Family, StringComparer.Ordinal)
                    .ThenBy(group => group.Key.Count)
                    .Select(group => new[]
                    {
                        group.Key.Family,
                        ScheduleWords.Of(group.Key.Count),
                        ScheduleWords.Of(group.Count()),
                        ScheduleWords.Of(group.Sum(plug => plug.Used)),
                        string.Join(", ", group.Select(plug => $"{plug.Part.Designation} {plug.Connector.Name}")),
                    }),
            ],
            ScheduleWords.Count(plugs.Length, "plug", "plugs") + ".");
    }

    private static IEnumerable<(Part Part, Connector Connector, int Used)> PlugsOf(MachineDesign design)
    {
        var landed = design.Conductors.SelectMany(conductor => new[] { conductor.From, conductor.To }).ToHashSet();
        return from part in design.Parts
               from connector in part.Type.Connectors
               where connector.Pluggable
               let used = connector.Terminals.Count(terminal => landed.Contains(new(part.Designation, terminal)))
               where used > 0
               select (part, connector, used);
    }
}
