using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads a file of readings from disk, strictly: every line names a check of the machine and a reading.</summary>
public static class StoredReadings
{
    private const long LargestFile = 10_000_000;

    /// <summary>The readings, or everything that is wrong with the file.</summary>
    public static Outcome<IReadOnlyList<TypedReading>> Read(string path, PlannedMachine planned)
    {
        if (TextOf(path) is not { } text)
            return Refuse(new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that it exists, that you may read it, and that it has less than 10 MB."));
        if (ReadingsFile.Read(text) is not { } readings)
            return Refuse(new Diagnostic(
                "no-readings-file",
                new SourcePlace(path, 0, 0),
                "This is no file of readings: its first line must be `proveout-readings 1`, every other one a check, a tab and a reading.",
                "`proveout rehearse` writes one to look at."));
        var line = 1;
        Diagnostic[] problems = [.. readings.Select(reading => ProblemOf(reading, new SourcePlace(path, ++line, 1), planned)).OfType<Diagnostic>()];
        return problems.Length > 0
            ? Outcome.Refused<IReadOnlyList<TypedReading>>(problems)
            : Outcome.Of<IReadOnlyList<TypedReading>>([.. readings.Select(reading => new TypedReading(reading.CheckId, reading.Text))]);
    }

    private static Outcome<IReadOnlyList<TypedReading>> Refuse(Diagnostic diagnostic) => Outcome.Refused<IReadOnlyList<TypedReading>>([diagnostic]);

    private static string? TextOf(string path)
    {
        try
        {
            return new FileInfo(path) is { Exists: true, Length: < LargestFile } ? File.ReadAllText(path) : null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static Diagnostic? ProblemOf((string CheckId, string Text) reading, SourcePlace place, PlannedMachine planned) =>
        planned.Dictionary.IndexOfCheck(reading.CheckId) is not { } check
            ? new Diagnostic("no-such-check", place, $"{planned.Machine.Design.Name} has no check `{reading.CheckId}`.", "`proveout readings MACHINE` lists the checks of its plan.")
            : ReadingText.TryRead(reading.Text, planned.Dictionary.Checks[check].Unit) is null
                ? new Diagnostic("unreadable-reading", place, $"`{reading.Text}` is not a reading.", ReadingText.HelpFor(planned.Dictionary.Checks[check].Unit))
                : null;
}
