using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The conductors in the order to fit them, and after each step the checks that are ready then.</summary>
internal sealed class OrderOfWork : IScheduleMaker
{
    public Schedule Of(ScheduleRequest request)
    {
        var number = 0;
        return new(
            "order-of-work",
            "Order of work",
            "Isolated and proved dead all the while. Fit the wires of a step, then take the readings that follow it: they already read what they will read when all is wired.",
            [new("No.", 0.6), new("Step", 2), new("What", 3.4), new("Expected", 1.2), new("Done", 0.6)],
            [.. request.Steps.Zip(request.ReadyChecks).SelectMany(step => RowsOf(step.First, step.Second, () => ++number))],
            $"{ScheduleWords.Count(request.Steps.Count, "step", "steps")}, {ScheduleWords.Count(request.Steps.Sum(step => step.Conductors.Count), "conductor", "conductors")}, "
                + $"{ScheduleWords.Count(request.ReadyChecks.Sum(checks => checks.Count), "check", "checks")} on the way.");
    }

    private static IEnumerable<IReadOnlyList<string>> RowsOf(WorkStep step, IReadOnlyList<Check> checks, Func<int> next)
    {
        foreach (var conductor in step.Conductors)
            yield return [ScheduleWords.Of(next()), $"{ScheduleWords.Of(step.Number)}. {step.Title}", $"Fit {conductor.Id}: {conductor.From} to {conductor.To}", "", Schedule.Box];
        foreach (var check in checks)
            yield return [ScheduleWords.Of(next()), $"{ScheduleWords.Of(step.Number)}. Check as you go", check.Title, CheckWords.Expected(check), Schedule.Box];
    }
}
