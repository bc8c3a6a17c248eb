using System.Text.Json;
using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Measurements in a journal.</summary>
/// <param name="journal">Keeps the builds.</param>
public sealed class MeasuringDesk(IJournal journal) : IMeasuringDesk
{
    /// <inheritdoc/>
    public async Task<Outcome<KeptMeasurement>> KeepAsync(string buildId, MeasurementRequest request, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (await FindAsync(buildId, cancellation) is not { } build)
            return Outcome.Refused<KeptMeasurement>([Refusals.NoSuchBuild(buildId)]);
        if (string.IsNullOrWhiteSpace(request.Person))
            return Outcome.Refused<KeptMeasurement>([Refusals.Empty("The name", "Say who you are.")]);
        try
        {
            var kept = Of(await journal.AppendAsync(build, DraftOf(request), cancellation))!;
            foreach (var (index, file) in request.Further.Index())
                await journal.AppendAsync(build, FurtherOf(request, kept.Sequence, file, index + 1), cancellation);
            return Outcome.Of(kept);
        }
        catch (JournalException refusal)
        {
            return Outcome.Refused<KeptMeasurement>([Refusals.Journal(refusal.Message)]);
        }
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<KeptMeasurement>?> OfBuildAsync(string buildId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is { } build
            ? [.. (await journal.ReadAsync(build, 0, cancellation)).Select(Of).OfType<KeptMeasurement>()]
            : null;

    /// <inheritdoc/>
    public async Task<MeasuredFile?> FileAsync(string buildId, string sha256, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var build) && await journal.ReadDataFileAsync(build, sha256, cancellation) is { } file
            ? new MeasuredFile(file.About.FileName, file.About.ContentType, file.Bytes)
            : null;

    // The key follows from the form's, so that a form that is sent twice is still entered once.
    private static EntryDraft FurtherOf(MeasurementRequest request, long sequence, MeasuredFile file, int number)
    {
        var key = request.Key.ToByteArray();
        key[^1] ^= (byte)number;
        return DraftOf(request with
        {
            Title = $"{request.Title}, data file {number + 1}",
            Summary = $"Belongs to entry {sequence}.",
            Results = [],
            Typed = new Dictionary<string, string>(),
            File = file,
            Key = new Guid(key),
        });
    }

    private static EntryDraft DraftOf(MeasurementRequest request) => EntryDraft.OfMeasurement(
        request.Key,
        request.Person.Trim(),
        new MeasurementTaken(
            request.Analysis,
            request.Title,
            request.Summary,
            [.. request.Results.Select(figure => new MeasuredResult(figure.Name, figure.Value, figure.Expanded, figure.Unit))],
            JsonSerializer.Serialize(new SortedDictionary<string, string>(request.Typed.ToDictionary(), StringComparer.Ordinal)),
            request.File?.Name ?? "",
            request.File?.ContentType ?? "",
            "",
            0),
        request.File?.Bytes ?? default);

    private static KeptMeasurement? Of(Entry entry) => entry.Content is not MeasurementTaken taken ? null : new(
        entry.Sequence,
        entry.Recorded,
        entry.Person,
        taken.Analysis,
        taken.Title,
        taken.Summary,
        [.. taken.Results.Select(result => new KeptFigure(result.Name, result.Value, result.Expanded, result.Unit))],
        JsonSerializer.Deserialize<Dictionary<string, string>>(taken.InputsJson) ?? [],
        taken.FileName,
        taken.Sha256);

    private async Task<Guid?> FindAsync(string buildId, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var id) && await journal.FindBuildAsync(id, cancellation) is not null ? id : null;
}
