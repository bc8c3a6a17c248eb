using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A file of readings from disk, read strictly: every line names a check of the machine and a reading.</summary>
public sealed class StoredReadings
{
    private const long LargestFile = 10_000_000;

    private readonly string _path;
    private readonly IReadOnlyList<(string CheckId, string Text)> _lines;

    private StoredReadings(string path, IReadOnlyList<(string CheckId, string Text)> lines) => (_path, _lines) = (path, lines);

    /// <summary>Reads a file, or says why it is none of readings; of what machine they are is asked later.</summary>
    public static Outcome<StoredReadings> Read(string path)
    {
        if (TextOf(path) is not { } text)
            return Refuse(new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that it exists, that you may read it, and that it has less than 10 MB."));
        return ReadingsFile.Read(text) is { } lines
            ? Outcome.Of(new StoredReadings(path, lines))
            : Refuse(new Diagnostic(
                "no-readings-file",
                new SourcePlace(path, 0, 0),
                "This is no file of readings: its first line must be `proveout-readings 1`, every other one a check, a tab and a reading.",
                "`proveout rehearse` writes one to look at."));
    }

    /// <summary>The readings of a machine's checks, or every line that is none.</summary>
    public Outcome<IReadOnlyList<TypedReading>> Of(PlannedMachine planned)
    {
        var line = 1;
        Diagnostic[] problems = [.. _lines.Select(reading => ProblemOf(reading, new SourcePlace(_path, ++line, 1), planned)).OfType<Diagnostic>()];
        return problems.Length > 0
            ? Outcome.Refused<IReadOnlyList<TypedReading>>(problems)
            : Outcome.Of<IReadOnlyList<TypedReading>>([.. _lines.Select(reading => new TypedReading(reading.CheckId, reading.Text))]);
    }

    private static Outcome<StoredReadings> Refuse(Diagnostic diagnostic) => Outcome.Refused<StoredReadings>([diagnostic]);

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
