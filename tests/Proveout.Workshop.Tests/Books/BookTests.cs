using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Proveout.Publish.Books;
using StbImageSharp;

namespace Proveout.Workshop.Tests.Books;

/// <summary>What a published book is.</summary>
public sealed partial class BookTests(BookOfBuild build) : IClassFixture<BookOfBuild>
{
    private const int HeaviestPage = 150_000;

    private static IEnumerable<(BookFile File, XDocument Page)> Pages(PublishedBook book) =>
        from file in book.Files
        where file.MediaType == "text/html"
        select (file, XDocument.Parse(Encoding.UTF8.GetString(file.Bytes.Span)));

    [Fact]
    public async Task Two_publishings_of_the_same_record_are_equal_to_the_byte()
    {
        var again = (await build.Desk.OfBuildAsync(build.Build, BookRequest.Plain with { WithNames = true }, TestContext.Current.CancellationToken))!.Value!;
        var once = (await build.Desk.OfBuildAsync(build.Build, BookRequest.Plain with { WithNames = true }, TestContext.Current.CancellationToken))!.Value!;

        Assert.Equal(once.Files.Select(file => file.Name), again.Files.Select(file => file.Name));
        Assert.All(once.Files.Zip(again.Files), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.Name));
        Assert.Equal(Archived(once), Archived(again));
    }

    [Fact]
    public void Every_link_leads_to_a_place_in_the_book()
    {
        var pages = Pages(build.WithNames).ToDictionary(page => page.File.Name, page => page.Page);
        var anchors = pages.ToDictionary(page => page.Key, page => page.Value.Descendants().Attributes("id").Select(id => id.Value).ToHashSet());
        var names = build.WithNames.Files.Select(file => file.Name).ToHashSet();

        var links = from page in pages
                    from attribute in page.Value.Descendants().Attributes()
                    where attribute.Name.LocalName is "href" or "src"
                    select (Page: page.Key, Parts: attribute.Value.Split('#'));
        Assert.NotEmpty(links);
        Assert.All(links, link =>
        {
            var page = link.Parts[0].Length > 0 ? link.Parts[0] : link.Page;
            Assert.Contains(page, names);
            if (link.Parts.Length > 1)
                Assert.Contains(link.Parts[1], anchors[page]);
        });
    }

    [Fact]
    public void No_file_names_another_place_to_fetch_from()
    {
        var fetched = from file in build.WithNames.Files
                      where file.MediaType is "text/html" or "text/css" or "text/javascript" or "image/svg+xml"
                      from Match address in Fetched().Matches(Encoding.UTF8.GetString(file.Bytes.Span))
                      where !address.Value.StartsWith("http://www.w3.org/", StringComparison.Ordinal)
                      select $"{address.Value} in {file.Name}";
        Assert.Empty(fetched);
    }

    [Fact]
    public void No_page_weighs_more_than_150_kB_with_style_script_and_drawings() =>
        Assert.All(Pages(build.WithNames), page =>
        {
            var shown = page.Page.Descendants().Attributes("src").Select(source => source.Value).Where(name => !name.StartsWith("photographs/", StringComparison.Ordinal)).Append("book.css");
            var weight = page.File.Bytes.Length + shown.Distinct().Sum(name => BookOfBuild.Named(build.WithNames, name).Bytes.Length);
            Assert.True(weight < HeaviestPage, FormattableString.Invariant($"{page.File.Name}: {weight}"));
        });

    [Fact]
    public void Every_chapter_is_on_the_first_page_and_in_the_PDF()
    {
        var front = XDocument.Parse(BookOfBuild.Text(build.Plain, BookSite.FirstPage));
        var print = BookOfBuild.TextOf(BookOfBuild.Named(build.Plain, BookSite.Print));
        string[] titles = [.. front.Descendants("ol").Single().Descendants("a").Select(link => link.Value)];

        Assert.Contains("Wiring, step by step", titles);
        Assert.Contains("First power, stage by stage", titles);
        Assert.Contains("What only eye, tug and hand find", titles);
        Assert.Contains("Settings", titles);
        Assert.Contains("What was otherwise here", titles);
        Assert.All(titles, title => Assert.Contains(Bare(title), Bare(print), StringComparison.Ordinal));
    }

    [Fact]
    public void A_mistake_that_was_made_here_is_told_with_what_it_does() =>
        Assert.Contains(
            Samples.Pennywort.Dictionary.Faults.First(fault => fault.Kind == "conductor-missing").Sentence,
            XDocument.Parse(BookOfBuild.Text(build.Plain, "differences.html")).Root!.Value,
            StringComparison.Ordinal);

    [Fact]
    public void A_photograph_stands_at_the_step_of_the_part_that_it_shows_upright_and_without_what_the_camera_wrote()
    {
        var steps = XDocument.Parse(BookOfBuild.Text(build.Plain, "steps.html"));
        Assert.Contains(steps.Descendants("img"), image => image.Attribute("src")!.Value.StartsWith("photographs/", StringComparison.Ordinal) && image.Attribute("loading")!.Value == "lazy");

        var held = build.Plain.Files.Where(file => file.MediaType == "image/jpeg").Select(file => ImageResult.FromMemory(file.Bytes.ToArray())).Single(image => image.Width != image.Height);
        Assert.Equal((20, 40), (held.Width, held.Height));
        Assert.All(build.Plain.Files.Where(file => file.MediaType == "image/jpeg"), file => Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(file.Bytes.Span), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_reader_takes_the_machine_file_from_the_book_and_starts_an_own_build()
    {
        var folder = Directory.CreateTempSubdirectory("proveout-book-");
        foreach (var file in build.Plain.Files.Where(file => file.Name.StartsWith("machine/", StringComparison.Ordinal)))
        {
            var path = Path.Combine(folder.FullName, file.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, file.Bytes, TestContext.Current.CancellationToken);
        }

        var command = XDocument.Parse(BookOfBuild.Text(build.Plain, "own-build.html")).Descendants("code").Last().Value.Split(' ');
        Assert.Equal(["proveout", "bench"], command[..2]);
        var read = Samples.Files.Read(Path.Combine(folder.FullName, command[2])).Value!;
        await using var own = await BenchFixture.OpenAsync();
        var bench = new Bench(new MachineShelf(Samples.Files, [read.Path]), Samples.Desk, own.Journal, new WorkshopRecords(own.Journal));
        var started = (await bench.StartAsync(new StartBuild(read.Id, "1", "Ada", ""), default)).Value!;

        Assert.Equal(Samples.Pennywort.Machine.Fingerprint, read.Fingerprint);
        Assert.NotNull((await bench.StateAsync(started.Id, default))!.CurrentCheckId);
        folder.Delete(recursive: true);
    }

    [Fact]
    public void A_machine_whose_names_are_markup_is_shown_by_its_names()
    {
        const string Hostile = "<script>alert(1)</script>\"&' </title><img src=x onerror=1>";
        var sample = Samples.Load("pennywort");
        var machine = sample with { Design = sample.Design with { Name = Hostile, Summary = Hostile, Parts = [.. sample.Design.Parts.Select((part, at) => at == 0 ? part with { Name = Hostile } : part)] } };
        var planned = Samples.Pennywort with { Machine = machine };

        var book = BookDesk.OfMachine(planned, Samples.Desk.EnergisingOf(sample), BookRequest.Plain with { Licence = $"As {Hostile} says", Credits = [Hostile] }).Value!;

        Assert.All(Pages(book), page =>
        {
            Assert.Contains(Hostile, page.Page.Descendants("title").Single().Value, StringComparison.Ordinal);
            Assert.DoesNotContain(page.Page.Descendants("script"), script => script.Value.Length > 0);
            Assert.DoesNotContain(page.Page.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        });
        Assert.DoesNotContain('<', BookOfBuild.Text(book, "search-data.js"));
        Assert.All(book.Files, file => Assert.Matches("^[a-z0-9][a-z0-9-]*([./][a-z0-9][a-z0-9-]*)*$", file.Name));
    }

    [Fact]
    public void Nothing_said_of_a_licence_keeps_all_rights_and_says_so() =>
        Assert.Contains("All rights are kept", BookOfBuild.Text(build.Plain, BookSite.FirstPage), StringComparison.Ordinal);

    [Theory]
    [InlineData("cc-by-sa-4.0", "CC-BY-SA-4.0 (identifier of the SPDX licence list).")]
    [InlineData("Free to use and to change", "Free to use and to change")]
    [InlineData("CC-BY-SA-40", null)]
    public void A_licence_is_an_identifier_that_is_known_or_words(string licence, string? expected) => Assert.Equal(expected, BookLicences.Of(licence).Value);

    [Fact]
    public async Task A_machine_file_that_names_the_builder_is_not_handed_on()
    {
        var sample = Samples.Load("pennywort");
        var entries = await build.Journal.ReadAsync(Guid.Parse(build.Build), 0, TestContext.Current.CancellationToken);
        var record = (await build.Journal.FindBuildAsync(Guid.Parse(build.Build), TestContext.Current.CancellationToken))!;
        var named = sample with { Texts = [sample.Texts[0] with { Text = $"{sample.Texts[0].Text}# drawn by Zebulina Quandt\n" }] };

        Assert.Empty(BookNames.InFiles(sample, record, entries));
        Assert.Equal("name-in-machine-file", Assert.Single(BookNames.InFiles(named, record, entries)).Rule);
    }

    private static byte[] Archived(PublishedBook book)
    {
        using var stream = new MemoryStream();
        BookDesk.Archive(book).Write(stream);
        using var archive = new ZipArchive(new MemoryStream(stream.ToArray()));
        Assert.Equal(book.Files.Count, archive.Entries.Count);
        return stream.ToArray();
    }

    private static string Bare(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    [GeneratedRegex("(?:https?:)?//[a-z][^\\s\"'<>)]*", RegexOptions.IgnoreCase)]
    private static partial Regex Fetched();
}
