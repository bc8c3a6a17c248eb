using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>How many ferrules, lugs, receptacles and contacts to buy, and where each kind goes.</summary>
internal sealed class TerminationList : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var ends = EndsOf(request.Design).ToArray();
        return new(
            "terminations",
            "Ferrules, lugs and contacts",
            "What goes on the ends of the conductors. Buy a tenth more; pull each power crimp, and a sample of the others.",
            [new("What", 2), new("Count", 0.6), new("Strip", 0.8), new("Where", 4)],
            [
                .. ends
                    .GroupBy(end => (end.Termination.Kind, end.Termination.Words, end.Termination.StripMm))
                    .OrderBy(group => group.Key.Kind)
                    .ThenBy(group => group.Key.Words, StringComparer.Ordinal)
                    .Select(group => new[]
                    {
                        group.Key.Words,
                        ScheduleWords.Of(group.Count()),
                        group.Key.StripMm is { } strip ? FormattableString.Invariant($"{strip} mm") : "",
                        string.Join(", ", group.Select(end => $"{end.Conductor.Id} at {end.Terminal}")),
                    }),
            ],
            $"{ScheduleWords.Count(ends.Length, "end", "ends")}, {ScheduleWords.Of(ends.Count(end => end.Termination.IsMade))} of them to be made.");
    }

    private static IEnumerable<(Conductor Conductor, TerminalReference Terminal, Termination Termination)> EndsOf(MachineDesign design) =>
        from conductor in design.Conductors
        from end in new[] { conductor.From, conductor.To }
        select (conductor, end, Terminations.At(design, conductor, end));
}
