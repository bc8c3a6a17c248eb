using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>What to fasten, and how firmly.</summary>
internal sealed class TorqueList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var rows = RowsOf(request.Design).ToArray();
        return new(
            "torque-list",
            "Fastening torques",
            "For steel screws, IEC 60999-1 table 4, from memory; plugs by common practice. A part's own data sheet goes first. Mark each screw when it is done, and again after the first heat.",
            [new("Part", 2), new("Terminals", 2.6), new("Screws", 0.7), new("Torque", 0.9), new("Done", 0.6), new("After heat", 0.9)],
            rows,
            "");
    }

    private static IEnumerable<IReadOnlyList<string>> RowsOf(MachineDesign design) =>
        from end in EndsOf(design)
        group end by (end.Terminal.Part, end.Torque) into screws
        let part = design.FindPart(screws.Key.Part)!
        let terminals = screws.Select(screw => screw.Terminal.Terminal).Distinct().ToArray()
        orderby Array.IndexOf([.. design.Parts], part)
        select new[]
        {
            $"{part.Designation} ({part.Name})",
            string.Join(", ", terminals),
            ScheduleWords.Of(terminals.Length),
            FormattableString.Invariant($"{screws.Key.Torque:0.0#} N·m"),
            Schedule.Box,
            Schedule.Box,
        };

    private static IEnumerable<(TerminalReference Terminal, double Torque)> EndsOf(MachineDesign design) =>
        from conductor in design.Conductors
        from end in new[] { conductor.From, conductor.To }
        let torque = Terminations.At(design, conductor, end).TorqueNewtonMetres
        where torque is not null
        select (end, torque.Value);
}
