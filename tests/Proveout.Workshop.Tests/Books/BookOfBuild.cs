using System.Text;
using Proveout.Journal;
using Proveout.Publish.Books;
using UglyToad.PdfPig;

namespace Proveout.Workshop.Tests.Books;

/// <summary>A build of a sample whose record names somebody wherever a person can type, and the books of it.</summary>
public sealed class BookOfBuild : IAsyncLifetime
{
    /// <summary>Each stands in one field of the record and nowhere else.</summary>
    public static readonly string[] Planted =
    [
        "Zebulina", "Quandt", "QX-7731", "Ottokara", "Brunhilde", "Kunigunde", "Leopoldine", "Theodolinde", "Marchionne", "Wendelgard", "Adalberta", "Sieglinda", "Yorickson",
        "Rosamunde", "Gertrudis", "Hildegund", "Irmengard", "Ludovica", "Ermentrud", "Philippa", "Storck", "Bonifazia", "Clothilde", "Xaverine", "Eberhardine", "Walpurga", "14:35",
    ];

    private readonly BenchFixture _fixture = BenchFixture.OpenAsync().GetAwaiter().GetResult();

    internal BookDesk Desk { get; private set; } = null!;

    internal IJournal Journal => _fixture.Journal;

    public string Build { get; private set; } = "";

    public PublishedBook Plain { get; private set; } = null!;

    public PublishedBook WithNames { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Desk = new BookDesk(_fixture.Shelf, Samples.Desk, _fixture.Bench, _fixture.Journal);
        Build = (await _fixture.Bench.StartAsync(new StartBuild("pennywort", "QX-7731", "Zebulina Quandt", "meter of Xaverine"), default)).Value!.Id;
        await PlantAsync();
        Plain = (await Desk.OfBuildAsync(Build, BookRequest.Plain, default))!.Value!;
        WithNames = (await Desk.OfBuildAsync(Build, BookRequest.Plain with { WithNames = true }, default))!.Value!;
    }

    public ValueTask DisposeAsync() => _fixture.DisposeAsync();

    /// <summary>Everything that a reader of a file can find in it: its bytes as text, and for a PDF the text of its pages and what it says of itself.</summary>
    public static string TextOf(BookFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var raw = Encoding.Latin1.GetString(file.Bytes.Span) + Encoding.UTF8.GetString(file.Bytes.Span);
        if (file.MediaType != "application/pdf")
            return raw;
        using var document = PdfDocument.Open(file.Bytes.ToArray());
        return string.Join('\n', [raw, document.Information.Title, document.Information.Author, document.Information.Subject, .. document.GetPages().Select(page => page.Text)]);
    }

    public static BookFile Named(PublishedBook book, string name)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Files.Single(file => file.Name == name);
    }

    public static string Text(PublishedBook book, string name) => Encoding.UTF8.GetString(Named(book, name).Bytes.Span);

    internal Task<Entry> AppendAsync(EntryContent content, ReadOnlyMemory<byte> bytes = default) =>
        Journal.AppendAsync(Guid.Parse(Build), new EntryDraft(Guid.NewGuid(), "Walpurga", "wrench of Eberhardine", content) { FileBytes = bytes });

    private async Task PlantAsync()
    {
        var state = (await _fixture.Bench.StateAsync(Build, default))!;
        var (first, second) = (state.Steps[0].Check.Id, state.Steps[1].Check.Id);
        await _fixture.Bench.EnterReadingAsync(Build, new ReadingRequest(first, "0.3", "Walpurga", Guid.NewGuid()), default);
        await AppendAsync(new CheckSkipped(second, "Yorickson has the probe"));
        await AppendAsync(new Deviation("corner of Ottokara", "Brunhilde made the wire longer"));
        await AppendAsync(new NoteWritten("Wendelgard came at 14:35"));
        await AppendAsync(new NoteWritten("the wire is to land on the part"));
        await AppendAsync(new MistakeFound("conductor-missing", Samples.Pennywort.Dictionary.Faults.First(fault => fault.Kind == "conductor-missing").Id, "Adalberta found it"));
        await AppendAsync(new PartReceived("K1", PartArrival.Different, "Sieglinda sent it"));
        await AppendAsync(new SignedOff("Philippa Storck", "aunt of Bonifazia", "Clothilde agrees"));
        var photo = Pictures.WithCameraData(Pictures.Jpeg(40, 20), orientation: 6, "Marchionne");
        await Journal.AppendAsync(Guid.Parse(Build), EntryDraft.OfPhoto(Guid.NewGuid(), "Walpurga", "hand of Kunigunde", "Leopoldine.jpg", "image/jpeg", photo, "Theodolinde points"));
        await Journal.AppendAsync(Guid.Parse(Build), EntryDraft.OfPhoto(Guid.NewGuid(), "Walpurga", "K1", "Leopoldine.jpg", "image/jpeg", Pictures.Jpeg(30, 30), "the relay"));
        await Journal.AppendAsync(Guid.Parse(Build), EntryDraft.OfMeasurement(
            Guid.NewGuid(),
            "Walpurga",
            new MeasurementTaken("tension", "belt of Rosamunde", "summed up by Gertrudis", [new MeasuredResult("note of Hildegund", 110, 0.5, "Hz")], """{"who":"Irmengard"}""", "Ludovica.csv", "text/csv", "", 0),
            "Ermentrud"u8.ToArray()));
    }
}
