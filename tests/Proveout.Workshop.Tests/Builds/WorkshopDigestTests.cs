using Proveout.Journal;

namespace Proveout.Workshop.Tests.Builds;

public sealed class WorkshopDigestTests
{
    private static readonly Build Some = new(Guid.CreateVersion7(), "1", "Small oven", new string('a', 64), "Ada", DateTimeOffset.UnixEpoch);

    [Fact]
    public void A_build_that_cannot_be_read_is_told_and_hides_none_of_the_others()
    {
        var digest = new WorkshopDigest();
        digest.Take(new BuildNews(Guid.NewGuid(), null, [], 3, "Entry 2 cannot be read."));
        digest.Take(new BuildNews(Some.Id, Some, [Read(1, 5)], 1, ""));
        Assert.Equal("Entry 2 cannot be read.", Assert.Single(digest.Damage).Value);
        Assert.Equal(5, Assert.Single(digest.OfMachine("Small oven").ReadersOf("c")).Word.Value);
    }

    [Fact]
    public void News_taken_in_twice_count_once_and_older_news_change_nothing()
    {
        var digest = new WorkshopDigest();
        var first = new BuildNews(Some.Id, Some, [Read(1, 5)], 1, "");
        var both = new BuildNews(Some.Id, Some, [Read(1, 5), Read(2, 6)], 2, "");
        foreach (var news in new[] { first, both, first, both })
            digest.Take(news);
        Assert.Equal(2, digest.Version);
        Assert.Equal(6, Assert.Single(digest.OfMachine("Small oven").ReadersOf("c")).Word.Value);
    }

    private static Entry Read(int sequence, double value) => new(
        Some.Id, sequence, Guid.NewGuid(), DateTimeOffset.UnixEpoch, "Ada", "", new ReadingEntered(new Journal.Reading("c", "", "", value, false, "Ω", "pass")), "", "");
}
