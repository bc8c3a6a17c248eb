namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteDamageTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("content", "no JSON")]
    [InlineData("content", "{\"kind\":\"recipe\"}")]
    [InlineData("content", "{\"text\":\"of no kind\"}")]
    [InlineData("recorded", "yesterday")]
    [InlineData("key", "1")]
    public async Task An_entry_that_cannot_be_read_is_named_in_a_sentence(string column, string value)
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Note("sound"));
        await journal.AppendAsync(build.Id, Drafts.Note("not for long"));
        RawFile.TakeGuardsOff(_folder.Journal);
        RawFile.Execute(_folder.Journal, $"UPDATE entries SET {column} = $value WHERE sequence = 2", ("$value", value));

        var damage = await Assert.ThrowsAsync<JournalDamagedException>(() => journal.ReadAsync(build.Id));

        Assert.StartsWith($"Entry 2 of build {build.Id} cannot be read", damage.Message, StringComparison.Ordinal);
        Assert.Equal(2, Assert.IsType<ChainBroken>(await journal.VerifyAsync(build.Id)).Sequence);
    }

    [Fact]
    public async Task A_build_that_cannot_be_read_is_named_in_a_sentence()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        RawFile.TakeGuardsOff(_folder.Journal);
        RawFile.Execute(_folder.Journal, "UPDATE builds SET started = 'yesterday'");

        var damage = await Assert.ThrowsAsync<JournalDamagedException>(() => journal.FindBuildAsync(build.Id));

        Assert.StartsWith($"The record of build {build.Id} cannot be read", damage.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_that_cannot_be_read_hides_no_news_of_another_build()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var (damaged, sound) = (await journal.StartBuildAsync(Drafts.Build("001")), await journal.StartBuildAsync(Drafts.Build("002")));
        await journal.AppendAsync(damaged.Id, Drafts.Note("a"));
        await journal.AppendAsync(sound.Id, Drafts.Note("b"));
        RawFile.TakeGuardsOff(_folder.Journal);
        RawFile.Execute(_folder.Journal, "UPDATE entries SET content = '{}' WHERE build_id = $build", ("$build", damaged.Id.ToString("D")));

        var news = (await journal.ReadNewsAsync(new Dictionary<Guid, int>(), most: 10)).ToDictionary(build => build.BuildId);

        Assert.StartsWith($"Entry 1 of build {damaged.Id} cannot be read", news[damaged.Id].Damage, StringComparison.Ordinal);
        Assert.Equal(1, news[damaged.Id].Recorded);
        Assert.Equal("", news[sound.Id].Damage);
        Assert.Single(news[sound.Id].Entries);
    }

    [Fact]
    public async Task A_photograph_that_was_exchanged_is_not_handed_out()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        RawFile.TakeGuardsOff(_folder.Journal);
        RawFile.Execute(_folder.Journal, "UPDATE photos SET bytes = x'010204'");

        var damage = await Assert.ThrowsAsync<JournalDamagedException>(() => journal.ReadPhotoAsync(build.Id, Fingerprint.OfBytes([1, 2, 3])));

        Assert.StartsWith("The photograph inlet.jpg of entry 1 is missing or is not the one that was attached.", damage.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_with_pages_overwritten_is_reported_as_damaged()
    {
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
            await journal.StartBuildAsync(Drafts.Build());
        await using (var file = File.OpenWrite(_folder.Journal))
        {
            // The first page, with the header, stays.
            file.Position = 4096;
            await file.WriteAsync(Enumerable.Repeat((byte)0xA5, (int)file.Length - 4096).ToArray());
        }

        var damage = await Assert.ThrowsAsync<JournalDamagedException>(() => SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()));

        Assert.Equal($"The journal {_folder.Journal} is damaged. Keep it as it is, and go back to a copy that is whole, or save what can be read with `proveout rescue`.", damage.Message);
    }
}
