using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Rehearses a build in which mistakes were made that a person names.</summary>
public static class RehearsedBuild
{
    /// <summary>What the checks of the plan would show.</summary>
    /// <param name="planned">The machine.</param>
    /// <param name="mistakes">Identifiers of the faults that were made, all at once.</param>
    /// <param name="seed">Seed of the random draw; equal seeds give equal readings.</param>
    public static Outcome<IReadOnlyList<TypedReading>> Readings(PlannedMachine planned, IReadOnlyList<string> mistakes, int seed)
    {
        var faults = planned.Dictionary.Faults.Select(fault => fault.Id).ToArray();
        var unknown = mistakes.Where(mistake => !faults.Contains(mistake)).ToArray();
        if (unknown.Length > 0)
            return Outcome.Refused<IReadOnlyList<TypedReading>>([.. unknown.Select(mistake => NoSuchMistake(planned, mistake))]);
        try
        {
            return Outcome.Of<IReadOnlyList<TypedReading>>(
            [
                .. Rehearsal.Readings(planned, [.. mistakes.Distinct().Select(mistake => Array.IndexOf(faults, mistake))], seed)
                    .Select(reading => new TypedReading(reading.CheckId, reading.Text)),
            ]);
        }
        catch (ArgumentException)
        {
            return Outcome.Refused<IReadOnlyList<TypedReading>>([Contradiction(planned)]);
        }
    }

    private static Diagnostic NoSuchMistake(PlannedMachine planned, string mistake)
    {
        var kind = mistake.Split(':')[0] + ":";
        var alike = planned.Dictionary.Faults.Where(fault => fault.Id.StartsWith(kind, StringComparison.Ordinal)).Take(2).Select(fault => $"`{fault.Id}`").ToArray();
        return new Diagnostic(
            "no-such-mistake",
            new SourcePlace(planned.Machine.Path, 0, 0),
            $"No mistake of {planned.Machine.Design.Name} is called `{mistake}`.",
            $"`proveout plan MACHINE --json --network` lists them{(alike.Length > 0 ? $", such as {string.Join(" and ", alike)}" : "")}.");
    }

    private static Diagnostic Contradiction(PlannedMachine planned) => new(
        "contradicting-mistakes",
        new SourcePlace(planned.Machine.Path, 0, 0),
        "Two of the mistakes change the same thing, so one build cannot have both.",
        "Leave one of them out.");
}
