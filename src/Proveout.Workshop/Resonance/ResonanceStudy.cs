using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Learns from recordings of acceleration where a machine rings, which shaper calms it, and what a change did.</summary>
public static class ResonanceStudy
{
    /// <summary>What follows from what was brought, or everything that is wrong with it.</summary>
    public static Outcome<ResonanceStudyView> Of(ResonanceRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var (asked, problems) = ResonanceAsked.Read(request);
        List<Diagnostic> wrong = [.. problems, .. Count(request)];
        if (wrong.Count > 0)
            return Outcome.Refused<ResonanceStudyView>(wrong);
        var before = Read(request.Recordings, asked, wrong);
        var after = Read(request.After, asked, wrong);
        if (wrong.Count > 0)
            return Outcome.Refused<ResonanceStudyView>(wrong);
        var now = ShakenAxis.Of(before, asked);
        var then = after.Count > 0 ? ShakenAxis.Of(after, asked) : [];
        if (after.Count > 0 && !now.Any(axis => then.Any(other => other.Name == axis.Name)))
            return Outcome.Refused<ResonanceStudyView>([new("no-common-direction", new SourcePlace(request.After[0].Name, 0, 0), "The two recordings have no direction in common that moves.", "Fix the sensor the same way both times, and head its columns alike.")]);
        return Outcome.Of(ResonanceViews.Of(now, then, asked));
    }

    private static IEnumerable<Diagnostic> Count(ResonanceRequest request)
    {
        if (request.Recordings.Count is 0 or > 2)
            yield return new(
                "number-of-recordings",
                new SourcePlace("recordings", 0, 0),
                request.Recordings.Count == 0 ? "There is no recording." : "More than two recordings were given.",
                "Give one, or one of each axis driven alone: x first, then y.");
        else if (request.After.Count > 0 && request.After.Count != request.Recordings.Count)
            yield return new("recordings-after", new SourcePlace("recordings after a change", 0, 0), "There are not as many recordings after the change as before it.", "Give the same ones again, in the same order.");
    }

    private static List<AccelerationRecord> Read(IReadOnlyList<ShakeFile> files, ResonanceAsked asked, List<Diagnostic> problems)
    {
        List<AccelerationRecord> records = [];
        foreach (var file in files)
        {
            try
            {
                using var stream = file.Open();
                var read = AccelerationReader.Read(stream, file.Name, asked.Options);
                problems.AddRange(read.Diagnostics);
                if (read.Value is { } record)
                    records.Add(record);
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                problems.Add(new Diagnostic("unreadable-file", new SourcePlace(file.Name, 0, 0), "The file cannot be read.", "See that the path is right and that you may read it."));
            }
        }

        return records;
    }
}
