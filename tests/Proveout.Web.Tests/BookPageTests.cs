using System.IO.Compression;
using System.Net;
using System.Text;

namespace Proveout.Web.Tests;

public sealed class BookPageTests : IAsyncLifetime
{
    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await BenchServer.StartAsync();
        _visitor = _server.Visit();
    }

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task Plan_and_record_lead_to_the_book_and_the_book_is_handed_out_as_an_archive()
    {
        Assert.Contains($"href=\"/machines/{_server.Build.MachineId}/book\"", (await _visitor.GetAsync($"/machines/{_server.Build.MachineId}/plan")).Html, StringComparison.Ordinal);
        Assert.Contains($"href=\"/builds/{_server.Build.Id}/book\"", (await _visitor.GetAsync(_server.Record)).Html, StringComparison.Ordinal);

        var book = await _visitor.BytesAsync($"/builds/{_server.Build.Id}/book.zip?licence=CC0-1.0");

        using var archive = new ZipArchive(new MemoryStream(book));
        var front = archive.Entries.Single(entry => entry.Name == "index.html");
        using var reader = new StreamReader(await front.OpenAsync(TestContext.Current.CancellationToken), Encoding.UTF8);
        Assert.Contains("CC0-1.0 (identifier of the SPDX licence list).", await reader.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Contains(archive.Entries, entry => entry.Name == "book.pdf");
    }

    [Fact]
    public async Task A_licence_that_is_not_known_is_refused_with_what_was_typed()
    {
        var page = await _visitor.GetAsync($"/machines/{_server.Build.MachineId}/book.zip?licence=CC-BY-SA-40");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("`CC-BY-SA-40` is not one of the SPDX identifiers known here.", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"CC-BY-SA-40\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task There_is_no_book_of_what_there_is_not()
    {
        Assert.Equal(HttpStatusCode.NotFound, (await _visitor.GetAsync("/machines/nothing/book")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await _visitor.GetAsync($"/builds/{Guid.Empty}/book.zip")).Status);
    }
}
