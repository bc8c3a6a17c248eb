namespace Proveout.Workshop.Tests;

public sealed class StartDeskTests
{
    [Fact]
    public async Task A_described_machine_stands_on_the_shelf_and_loses_its_guesses_one_by_one()
    {
        using var fixture = new EditFixture();
        var desk = new StartDesk(Samples.Files, fixture.Desk);
        var made = (await desk.MakeAsync(Answers("none"), "Ada", default)).Value!;
        Assert.NotNull(fixture.Shelf.Find(made.Id));

        var guesses = desk.Guesses(made.Id)!.Guesses;
        Assert.True(desk.Confirm(made.Id, [guesses[0].Guess, guesses[^1].Guess], "Ada").IsSaved);
        Assert.Equal(guesses.Skip(1).SkipLast(1).Select(each => (each.About, each.Guess.Words)), desk.Guesses(made.Id)!.Guesses.Select(each => (each.About, each.Guess.Words)));
        Assert.True(desk.Confirm(made.Id, [.. desk.Guesses(made.Id)!.Guesses.Select(each => each.Guess)], "Ada").IsSaved);
        Assert.Empty(desk.Guesses(made.Id)!.Guesses);
    }

    [Fact]
    public async Task A_guess_that_moved_is_not_taken_out()
    {
        using var fixture = new EditFixture();
        var desk = new StartDesk(Samples.Files, fixture.Desk);
        var made = (await desk.MakeAsync(Answers("230"), "Ada", default)).Value!;
        var guess = desk.Guesses(made.Id)!.Guesses[1].Guess;

        Assert.Equal("changed-meanwhile", Assert.Single(desk.Confirm(made.Id, [guess with { Line = guess.Line + 1 }], "Ada").Problems).Rule);
        Assert.Equal("nothing-chosen", Assert.Single(desk.Confirm(made.Id, [], "Ada").Problems).Rule);
        Assert.Equal("no-such-machine", Assert.Single(desk.Confirm("nowhere", [guess], "Ada").Problems).Rule);
        Assert.Null(desk.Guesses("nowhere"));
    }

    [Fact]
    public async Task Nothing_is_made_of_contradictions_or_for_nobody()
    {
        using var fixture = new EditFixture();
        var desk = new StartDesk(Samples.Files, fixture.Desk);
        var machines = fixture.Shelf.Machines.Count;

        Assert.NotEmpty((await desk.MakeAsync(new Dictionary<string, string>(Answers("none")) { ["plate"] = "mains" }, "Ada", default)).Diagnostics);
        Assert.NotEmpty((await desk.MakeAsync(Answers("none"), " ", default)).Diagnostics);
        Assert.Equal(machines, fixture.Shelf.Machines.Count);
    }

    private static Dictionary<string, string> Answers(string mains) =>
        new(StringComparer.Ordinal) { [StartQuestions.Name] = "Hill bench", ["mains"] = mains, ["board"] = "four", ["motors"] = "3" };
}
