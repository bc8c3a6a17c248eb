using System.Net;

namespace Proveout.Web.Tests;

public sealed class PartsPageTests : IAsyncLifetime
{
    private BenchServer _server = null!;
    private Visitor _visitor = null!;

    private string Address => $"/builds/{_server.Build.Id}/parts";

    public async ValueTask InitializeAsync() => _visitor = (_server = await BenchServer.StartAsync()).Visit();

    public async ValueTask DisposeAsync()
    {
        _visitor.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task A_part_that_came_is_ticked_off()
    {
        var sent = await _visitor.SendAsync(Address, "A1", ("came", "got"), ("note", ""));
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Contains("1 got, 0 missing, 0 different", (await _visitor.GetAsync(Address)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_that_differs_is_noted_in_the_record()
    {
        await _visitor.SendAsync(Address, "A1", ("came", "different"), ("note", "Its fuse is 10 A."));
        Assert.Contains("Another one came: Its fuse is 10 A.", (await _visitor.GetAsync(_server.Record)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_later_answer_stands_in_the_place_of_an_earlier_one()
    {
        await _visitor.SendAsync(Address, "A1", ("came", "missing"), ("note", ""));
        await _visitor.SendAsync(Address, "A1", ("came", "got"), ("note", ""));
        Assert.Contains("1 got, 0 missing", (await _visitor.GetAsync(Address)).Text, StringComparison.Ordinal);
        Assert.Contains("Did not come.", (await _visitor.GetAsync(_server.Record)).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A1", "different", "Say in what the part differs")]
    [InlineData("A1", "perhaps", "Say whether the part is there, missing, or another one.")]
    [InlineData("A99", "got", "This machine has no part `A99`.")]
    public async Task An_answer_that_says_nothing_is_refused_in_words(string part, string came, string words)
    {
        var page = await _visitor.SendAsync(Address, "A1", ("form", part), ("came", came), ("note", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains(words, page.Text, StringComparison.Ordinal);
        Assert.Contains("0 got", (await _visitor.GetAsync(Address)).Text, StringComparison.Ordinal);
    }
}
