using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Receiving over a journal and the machines at hand.</summary>
/// <param name="shelf">The machines.</param>
/// <param name="journal">Keeps the builds.</param>
public sealed class ReceivingDesk(MachineShelf shelf, IJournal journal) : IReceivingDesk
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<ArrivedPart>?> PartsAsync(string buildId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is var (build, design) ? await PartsAsync(build, design, cancellation) : null;

    /// <inheritdoc/>
    public async Task<Outcome<ArrivedPart>> NoteAsync(string buildId, ArrivalRequest request, CancellationToken cancellation)
    {
        if (await FindAsync(buildId, cancellation) is not var (build, design))
            return Outcome.Refused<ArrivedPart>([Refusals.NoSuchBuild(buildId)]);
        if (design.FindPart(request.Designation) is null)
            return Outcome.Refused<ArrivedPart>([Refusals.NoSuchPart(request.Designation)]);
        if (Arrivals.Read(request.Came) is not { } arrival)
            return Outcome.Refused<ArrivedPart>([Refusals.Empty("The answer", "Say whether the part is there, missing, or another one.")]);
        var note = request.Note.Trim();
        if (arrival == PartArrival.Different && note.Length == 0)
            return Outcome.Refused<ArrivedPart>([Refusals.Empty("The note", "Say in what the part differs: its checks may read something else.")]);
        if (string.IsNullOrWhiteSpace(request.Person))
            return Outcome.Refused<ArrivedPart>([Refusals.Empty("The name", "Say who you are.")]);
        try
        {
            await journal.AppendAsync(build.Id, new EntryDraft(request.Key, request.Person.Trim(), "", new PartReceived(request.Designation, arrival, note)), cancellation);
            return Outcome.Of((await PartsAsync(build, design, cancellation)).First(part => part.Designation == request.Designation));
        }
        catch (JournalException refusal)
        {
            return Outcome.Refused<ArrivedPart>([Refusals.Journal(refusal.Message)]);
        }
    }

    private async Task<IReadOnlyList<ArrivedPart>> PartsAsync(Build build, MachineDesign design, CancellationToken cancellation)
    {
        var said = new Dictionary<string, (PartReceived Received, string Person)>(StringComparer.Ordinal);
        foreach (var entry in await journal.ReadAsync(build.Id, 0, cancellation))
            if (entry.Content is PartReceived received)
                said[received.Designation] = (received, entry.Person);
        return [.. PartOrder.Of(design).Select(part => Of(part, said.GetValueOrDefault(part.Designation)))];
    }

    private static ArrivedPart Of(Part part, (PartReceived? Received, string Person) said) => new(
        part.Designation,
        part.Type.Name,
        part.Name,
        string.Join("; ", PartMarks.Of(part)),
        said.Received is { } received ? Arrivals.Of(received.Arrival) : "",
        said.Received?.Note ?? "",
        said.Person ?? "");

    private async Task<(Build Build, MachineDesign Design)?> FindAsync(string buildId, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var id)
        && await journal.FindBuildAsync(id, cancellation) is { } build
        && shelf.OfBuild(build.MachineFingerprint, build.MachineName) is { } machine
            ? (build, machine.Design)
            : null;
}
