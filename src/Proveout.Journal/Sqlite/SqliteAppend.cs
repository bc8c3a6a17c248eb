using Microsoft.Data.Sqlite;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Sqlite;

/// <summary>The two ways in which a journal grows, each inside a transaction that no other writer can enter.</summary>
internal static class SqliteAppend
{
    public static Build Start(SqliteConnection connection, BuildDraft draft, TimeProvider clock)
    {
        if (SqliteRows.FindBuild(connection, draft.Id)?.Decode() is { } started)
            return IsOf(started, draft)
                ? started
                : throw new KeyReusedException(draft.Id, $"the build with serial number {started.Serial}");
        if (SqliteRows.FindBuild(connection, draft.MachineName, draft.Serial)?.Decode() is { } holder)
            throw new SerialTakenException(holder);
        var build = StoredBuild.From(draft, clock.GetUtcNow());
        SqliteRows.Add(connection, build);
        return build.Decode();
    }

    public static Entry Append(SqliteConnection connection, Guid buildId, EntryDraft draft, TimeProvider clock)
    {
        var end = SqliteRows.FindEnd(connection, buildId) ?? throw new BuildNotFoundException(buildId);
        if (SqliteRows.FindEntry(connection, draft.Key) is { } recorded)
            return recorded.IsOf(buildId, draft)
                ? recorded.Decode()
                : throw new KeyReusedException(draft.Key, $"entry {recorded.Sequence}");
        if (draft.Content is ReadingCorrected correction)
            RequireReading(connection, buildId, correction);
        if (KeptFile.Of(draft.Content) is { } file)
            SqliteRows.Keep(connection, file.Sha256, draft.FileBytes);
        var entry = StoredEntry.From(buildId, draft, clock.GetUtcNow(), end);
        SqliteRows.Add(connection, entry);
        return entry.Decode();
    }

    private static bool IsOf(Build build, BuildDraft draft) =>
        new BuildDraft(build.Id, build.Serial, build.MachineName, build.MachineFingerprint, build.Builder) == draft;

    private static void RequireReading(SqliteConnection connection, Guid buildId, ReadingCorrected correction)
    {
        var corrected = SqliteRows.FindEntry(connection, buildId, correction.Corrects)?.Decode().Content switch
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
