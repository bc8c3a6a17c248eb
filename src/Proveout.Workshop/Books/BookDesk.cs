using System.IO.Compression;
using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Publishes machines of a shelf and builds of a journal as books.</summary>
/// <param name="shelf">The machines.</param>
/// <param name="desk">Plans them.</param>
/// <param name="bench">Knows where builds stand.</param>
/// <param name="journal">Keeps their records.</param>
public sealed class BookDesk(MachineShelf shelf, PlanDesk desk, IBench bench, IJournal journal)
{
    // The first moment that an archive can bear: equal books are equal archives.
    private static readonly DateTimeOffset NoMoment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The book of a machine as designed.</summary>
    public static Outcome<PublishedBook> OfMachine(PlannedMachine planned, EnergisingView energising, BookRequest request)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(request);
        return Put(new BookCase(planned, energising), "", request);
    }

    /// <summary>The book of a machine of the shelf; null when there is no such machine.</summary>
    public Outcome<PublishedBook>? OfMachine(string machineId, BookRequest request) =>
        shelf.Find(machineId) is { } machine ? OfMachine(desk.Of(machine), desk.EnergisingOf(machine), request) : null;

    /// <summary>The book of a build; null when there is no such build, or its machine is not at hand.</summary>
    public async Task<Outcome<PublishedBook>?> OfBuildAsync(string buildId, BookRequest request, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (await bench.StateAsync(buildId, cancellation) is not { } state || !Guid.TryParse(buildId, out var id) || await journal.FindBuildAsync(id, cancellation) is not { } build)
            return null;
        var machine = shelf.OfBuild(build.MachineFingerprint, build.MachineName)!;
        var entries = await journal.ReadAsync(id, 0, cancellation);
        if (!request.WithNames && BookNames.InFiles(machine, build, entries) is { Count: > 0 } named)
            return Outcome.Refused<PublishedBook>(named);
        var bare = new BookCase(desk.Of(machine), desk.EnergisingOf(machine));
        var story = new BuildStory(
            build,
            state,
            entries,
            await PhotographsAsync(id, entries, cancellation),
            (await new MeasuringDesk(journal).OfBuildAsync(buildId, cancellation))!,
            new NoteSieve(build, entries, request, BookNames.Vocabulary(BookRegister.Of(bare))));
        return Put(bare with { Story = story }, request.WithNames ? $"build {build.Serial} by {build.Builder}" : "", request);
    }

    /// <summary>A book as one archive to take away (ZIP). Equal books give equal archives.</summary>
    public static PaperFile Archive(PublishedBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new($"{book.Name}.zip", "application/zip", stream =>
        {
            using var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
            foreach (var file in book.Files.OrderBy(file => file.Name, StringComparer.Ordinal))
            {
                var entry = archive.CreateEntry($"{book.Name}/{file.Name}", CompressionLevel.Optimal);
                entry.LastWriteTime = NoMoment;
                using var content = entry.Open();
                content.Write(file.Bytes.Span);
            }
        });
    }

    private static Outcome<PublishedBook> Put(BookCase book, string which, BookRequest request)
    {
        var licence = BookLicences.Of(request.Licence);
        if (licence.Value is null)
            return Outcome.Refused<PublishedBook>(licence.Diagnostics);
        var machine = book.Planned.Machine;
        var written = new BuildBook(
            machine.Design.Name,
            machine.Design.Summary,
            which,
            machine.Fingerprint,
            licence.Value,
            [.. request.Credits, "Expectations, drawings and lists: computed by Proveout.", "Letters of the printed book: DejaVu Sans Condensed, free to pass on."],
            BookRegister.Of(book),
            BookMachineFiles.Of(machine).Files);
        var name = PlainNames.Of($"{machine.Design.Name} book") is { Length: > 0 } plain ? plain : "book";
        return Outcome.Of(new PublishedBook(name, BookSite.Of(written), book.Story?.Notes.Withheld ?? []));
    }

    private async Task<IReadOnlyDictionary<string, PublishedPhotograph?>> PhotographsAsync(Guid build, IReadOnlyList<Entry> entries, CancellationToken cancellation)
    {
        var photographs = new Dictionary<string, PublishedPhotograph?>(StringComparer.Ordinal);
        foreach (var sha256 in entries.Select(entry => entry.Content).OfType<PhotoAttached>().Select(photo => photo.Sha256).Distinct())
            photographs[sha256] = await journal.ReadPhotoAsync(build, sha256, cancellation) is { } photo ? PublishedPhotograph.Of(photo.Bytes) : null;
        return photographs;
    }
}
