namespace Proveout.Workshop.Tests;

public sealed class RecentlyUsedTests
{
    [Fact]
    public void A_thing_is_made_once_however_often_it_is_asked_for()
    {
        var things = new RecentlyUsed<string, object>(2);
        var first = things.GetOrMake("a", () => new());

        Assert.Same(first, things.GetOrMake("a", () => new()));
    }

    [Fact]
    public async Task A_thing_is_made_once_when_many_ask_for_it_at_once()
    {
        var things = new RecentlyUsed<string, object>(2);
        var made = 0;

        var answers = await Task.WhenAll(Enumerable.Range(0, 50).Select(_ => Task.Run(() => things.GetOrMake("a", () => Interlocked.Increment(ref made)))));

        Assert.Equal(1, made);
        Assert.Single(answers.Distinct());
    }

    [Fact]
    public void Of_more_than_are_kept_the_one_not_asked_for_longest_is_let_go()
    {
        var things = new RecentlyUsed<string, string>(2);
        things.Set("a", "first");
        things.Set("b", "second");
        Assert.True(things.TryFind("a", out _));

        things.Set("c", "third");

        Assert.False(things.TryFind("b", out _));
        Assert.Equal(("first", "third"), (things.GetOrMake("a", () => "anew"), things.GetOrMake("c", () => "anew")));
    }

    [Fact]
    public void However_many_are_asked_for_no_more_are_kept()
    {
        var things = new RecentlyUsed<int, int>(10);

        foreach (var number in Enumerable.Range(0, 1000))
            things.GetOrMake(number, () => number);

        Assert.Equal(10, things.Count);
    }

    [Fact]
    public void What_is_unwanted_is_made_anew()
    {
        var things = new RecentlyUsed<string, string?>(10);
        Assert.Null(things.GetOrMake("a", () => null));

        things.Drop(thing => thing is null);

        Assert.Equal("found", things.GetOrMake("a", () => "found"));
    }

    [Fact]
    public void Making_one_thing_holds_up_nobody_who_asks_for_another()
    {
        var things = new RecentlyUsed<string, string>(10);

        Assert.Equal("other", things.GetOrMake("a", () => Task.Run(() => things.GetOrMake("b", () => "other")).WaitAsync(TimeSpan.FromSeconds(30)).GetAwaiter().GetResult()));
    }
}
