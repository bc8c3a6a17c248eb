namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task News_is_what_each_build_recorded_beyond_what_is_known_of_it()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var (first, second) = (await journal.StartBuildAsync(Drafts.Build("001")), await journal.StartBuildAsync(Drafts.Build("002")));
        foreach (var (build, note) in new[] { (first, "a"), (first, "b"), (second, "c") })
            await journal.AppendAsync(build.Id, Drafts.Note(note));

        var news = await journal.ReadNewsAsync(new Dictionary<Guid, int> { [first.Id] = 1, [second.Id] = 1 }, most: 10);

        var only = Assert.Single(news);
        Assert.Equal((first, 2, ""), (only.Build, only.Recorded, only.Damage));
        Assert.Equal([new NoteWritten("b")], only.Entries.Select(entry => entry.Content));
    }

    [Fact]
    public async Task A_build_that_is_not_known_is_news_even_without_an_entry()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());

        var only = Assert.Single(await journal.ReadNewsAsync(new Dictionary<Guid, int>(), most: 10));

        Assert.Equal((build.Id, build, 0), (only.BuildId, only.Build, only.Recorded));
        Assert.Empty(await journal.ReadNewsAsync(new Dictionary<Guid, int> { [build.Id] = 0 }, most: 10));
    }

    [Fact]
    public async Task The_size_grows_with_each_build_and_each_entry()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        Assert.Equal(new JournalSize(0, 0), await journal.SizeAsync());
        var build = await journal.StartBuildAsync(Drafts.Build("001"));
        await journal.StartBuildAsync(Drafts.Build("002"));
        await journal.AppendAsync(build.Id, Drafts.Note("a"));
        Assert.Equal(new JournalSize(2, 1), await journal.SizeAsync());
    }

    [Fact]
    public async Task News_of_many_builds_comes_in_portions()
    {
        await using var journal = await OpenAsync(new SteppingClock());
        foreach (var number in Enumerable.Range(0, 5))
            await journal.AppendAsync((await journal.StartBuildAsync(Drafts.Build($"{number}"))).Id, Drafts.Note("a"));
        var known = new Dictionary<Guid, int>();
        var portions = new List<int>();
        while (await journal.ReadNewsAsync(known, most: 2) is { Count: > 0 } news)
        {
            portions.Add(news.Count);
            foreach (var build in news)
                known[build.BuildId] = build.Recorded;
        }

        Assert.Equal([2, 2, 1], portions);
        Assert.Equal(5, known.Count);
    }
}
