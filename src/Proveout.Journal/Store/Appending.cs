using Proveout.Journal.Chain;

namespace Proveout.Journal.Store;

/// <summary>The two ways in which a journal grows, each inside a transaction that no other writer can enter.</summary>
internal static class Appending
{
    public static Build Start(IJournalRows rows, BuildDraft draft, TimeProvider clock)
    {
        // Where each statement sees all that is committed, the build itself may be recorded between the two looks, and then holds its own serial number.
        if ((rows.FindBuild(draft.Id) ?? rows.FindBuild(draft.MachineName, draft.Serial))?.Decode() is { } started)
            return started.Id != draft.Id ? throw new SerialTakenException(started)
                : IsOf(started, draft) ? started
                : throw new KeyReusedException(draft.Id, $"the build with serial number {started.Serial}");
        var build = StoredBuild.From(draft, clock.GetUtcNow());
        rows.Add(build);
        return build.Decode();
    }

    public static Entry Append(IJournalRows rows, Guid buildId, EntryDraft draft, TimeProvider clock)
    {
        var end = rows.FindEnd(buildId) ?? throw new BuildNotFoundException(buildId);
        if (rows.FindEntry(draft.Key) is { } recorded)
            return recorded.IsOf(buildId, draft)
                ? recorded.Decode()
                : throw new KeyReusedException(draft.Key, $"entry {recorded.Sequence}");
        if (draft.Content is ReadingCorrected correction)
            RequireReading(rows, buildId, correction);
        if (KeptFile.Of(draft.Content) is { } file)
            rows.Keep(file.Sha256, draft.FileBytes);
        var entry = StoredEntry.From(buildId, draft, clock.GetUtcNow(), end);
        rows.Add(entry);
        return entry.Decode();
    }

    private static bool IsOf(Build build, BuildDraft draft) =>
        new BuildDraft(build.Id, build.Serial, build.MachineName, build.MachineFingerprint, build.Builder) == draft;

    public static void RequireReading(IJournalRows rows, Guid buildId, ReadingCorrected correction)
    {
        var corrected = rows.FindEntry(buildId, correction.Corrects)?.Decode().Content switch
        {
            ReadingEntered entered => entered.Reading,
            ReadingCorrected earlier => earlier.Reading,
            null => throw new CorrectionRefusedException(correction.Corrects, "this build has no such entry."),
            _ => throw new CorrectionRefusedException(correction.Corrects, "it holds no reading."),
        };
        if (corrected.CheckId != correction.Reading.CheckId)
            throw new CorrectionRefusedException(
                correction.Corrects, $"it holds a reading of {corrected.CheckId}, not of {correction.Reading.CheckId}.");
    }
}
