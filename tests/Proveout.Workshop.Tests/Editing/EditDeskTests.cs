using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

public sealed class EditDeskTests : IDisposable
{
    private readonly EditFixture _machine = new();

    private readonly string _first;
    private readonly string _second;

    public EditDeskTests() => (_first, _second) = (_machine.View.Design.Conductors[0].Id, _machine.View.Design.Conductors[^1].Id);

    [Fact]
    public void A_save_changes_the_file_and_its_undo_gives_the_same_bytes_back()
    {
        var before = _machine.Text;

        Assert.True(_machine.Paint(_first, "pink").IsSaved);
        Assert.NotEqual(before, _machine.Text);
        Assert.True(_machine.Desk.Undo(EditFixture.Id, _machine.View.Revision, "Ada").IsSaved);

        Assert.Equal(before, _machine.Text);
    }

    [Fact]
    public void What_was_taken_back_is_made_again_across_saves_and_restarts()
    {
        _machine.Paint(_first, "pink");
        _machine.Paint(_first, "violet");
        _machine.Desk.Undo(EditFixture.Id, _machine.View.Revision, "Ada");
        var (_, later) = _machine.Open();
        later.Undo(EditFixture.Id, later.View(EditFixture.Id)!.Revision, "Ben");

        later.Redo(EditFixture.Id, later.View(EditFixture.Id)!.Revision, "Ben");
        Assert.Equal(ConductorColour.Pink, _machine.ColourOf(_first));
        later.Redo(EditFixture.Id, later.View(EditFixture.Id)!.Revision, "Ben");
        Assert.Equal(ConductorColour.Violet, _machine.ColourOf(_first));
        Assert.Equal("nothing-to-redo", Assert.Single(later.Redo(EditFixture.Id, later.View(EditFixture.Id)!.Revision, "Ben").Problems).Rule);
    }

    [Fact]
    public void Every_revision_says_who_saved_what_and_keeps_the_text_before()
    {
        var before = _machine.View.Files;

        _machine.Paint(_first, "pink", person: "Ada");
        _machine.Paint(_second, "violet", person: "Ben");

        var revisions = _machine.Desk.Revisions(EditFixture.Id)!;
        Assert.Equal(["Ben", "Ada", ""], revisions.Select(revision => revision.Revision.Person));
        Assert.Contains(revisions[1].Changes, change => change.Kind == ChangeKind.ColourChanged && change.Subjects.Contains(_first));
        Assert.Equal(before[0].Text, _machine.Desk.FilesAt(EditFixture.Id, 1)![0].Text);
    }

    [Fact]
    public void Two_people_who_change_different_things_both_keep_what_they_saved()
    {
        var seen = _machine.View.Revision;

        Assert.True(_machine.Paint(_first, "pink", seen, "Ada").IsSaved);
        Assert.True(_machine.Paint(_second, "violet", seen, "Ben").IsSaved);

        Assert.Equal((ConductorColour.Pink, ConductorColour.Violet), (_machine.ColourOf(_first), _machine.ColourOf(_second)));
    }

    [Fact]
    public void Two_people_who_change_the_same_thing_are_asked_and_shown_both()
    {
        var seen = _machine.View.Revision;
        _machine.Paint(_first, "pink", seen, "Ada");

        var answer = _machine.Paint(_first, "violet", seen, "Ben");

        var conflict = Assert.Single(answer.Conflicts);
        Assert.Equal(new EditedThing("conductors", _first), conflict.Thing);
        Assert.Contains("colour: violet", conflict.Mine, StringComparison.Ordinal);
        Assert.Contains("colour: pink", conflict.Theirs, StringComparison.Ordinal);
        Assert.Equal(ConductorColour.Pink, _machine.ColourOf(_first));
        Assert.True(_machine.Paint(_first, "violet", answer.Revision, "Ben").IsSaved);
    }

    [Fact]
    public void Fifty_saves_at_once_from_two_processes_all_arrive()
    {
        var ids = _machine.View.Design.Conductors.Take(25).Select(conductor => conductor.Id).ToArray();
        var (_, other) = _machine.Open();
        var seen = _machine.View.Revision;

        Parallel.For(0, 50, number =>
        {
            var (desk, key, value) = number % 2 == 0 ? (_machine.Desk, "cable", "loom") : (other, "insulation", "600 V");
            var edit = new SaveEdits(seen, [new FieldEdit(new("conductors", ids[number / 2]), [key], EditedValue.Of(value))], $"Person {number}");
            var answer = desk.Save(EditFixture.Id, edit);
            while (!answer.IsSaved)
                answer = desk.Save(EditFixture.Id, edit with { Base = answer.Revision });
        });

        var made = _machine.View.Design.Conductors.Take(25).Select(conductor => conductor.Make);
        Assert.All(made, make => Assert.Equal(("loom", 600), (make.Cable, make.Insulation!.Value.Volts)));
        Assert.Equal(51, _machine.View.Revision);
    }

    [Fact]
    public void An_edit_that_makes_the_machine_impossible_is_refused_with_its_place_and_nothing_changes()
    {
        var before = _machine.Text;

        var answer = _machine.Paint(_first, "sparkling");

        Assert.Equal("unknown-word", Assert.Single(answer.Problems).Rule);
        Assert.Equal((before, 0), (_machine.Text, _machine.View.Revision));
    }

    [Fact]
    public void A_text_with_errors_is_kept_as_a_draft_and_the_machine_stays_the_last_valid_one()
    {
        var file = _machine.View.Files[0];
        var before = _machine.Text;

        var answer = _machine.Desk.Save(EditFixture.Id, new SaveText(0, file.File, file.Text + "\nnonsense: [", 0, "Ada"));

        Assert.NotEmpty(answer.Problems);
        Assert.Equal(before, _machine.Text);
        Assert.EndsWith("nonsense: [", _machine.Desk.Draft(EditFixture.Id, answer.Draft)!.Files.Single(each => each.Name == file.File).Text, StringComparison.Ordinal);
        Assert.Single(_machine.View.Drafts);
    }

    [Fact]
    public void A_draft_that_is_mended_becomes_the_machine_and_is_open_no_more()
    {
        var file = _machine.View.Files[0];
        var broken = _machine.Desk.Save(EditFixture.Id, new SaveText(0, file.File, file.Text + "\nnonsense: [", 0, "Ada"));
        _machine.Paint(_first, "pink", person: "Ben");

        var mended = _machine.Desk.Save(EditFixture.Id, new SaveText(0, file.File, file.Text + "\n# mended\n", broken.Draft, "Ada"));

        Assert.True(mended.IsSaved);
        Assert.Empty(_machine.View.Drafts);
        Assert.EndsWith("# mended\n", _machine.View.Files[0].Text, StringComparison.Ordinal);
        Assert.Equal(ConductorColour.Pink, _machine.ColourOf(_first));
    }

    [Fact]
    public void A_file_changed_by_something_else_becomes_a_revision_of_its_own()
    {
        _machine.Paint(_first, "pink");
        var path = Directory.EnumerateFiles(_machine.Machine, "*.yaml").First();

        File.AppendAllText(path, "\n# by hand\n");

        Assert.Equal(RevisionKind.Outside, _machine.Desk.Revisions(EditFixture.Id)![0].Revision.Kind);
        Assert.Equal(3, _machine.View.Revision);
    }

    [Fact]
    public void A_file_broken_by_something_else_is_kept_as_a_draft_and_the_machine_stays()
    {
        _machine.Paint(_first, "pink");

        File.AppendAllText(Directory.EnumerateFiles(_machine.Machine, "*.yaml").First(), "\n]\n");

        Assert.Equal((2, ConductorColour.Pink), (_machine.View.Revision, _machine.ColourOf(_first)));
        Assert.Single(_machine.View.Drafts);
        Assert.Single(_machine.View.Drafts);
    }

    [Fact]
    public void A_save_that_stopped_before_the_files_were_written_is_finished_at_the_next_look()
    {
        var before = Directory.EnumerateFiles(_machine.Machine, "*.yaml").ToDictionary(file => file, File.ReadAllText);
        _machine.Paint(_first, "pink");
        foreach (var (file, text) in before)
            File.WriteAllText(file, text);
        File.Delete(Path.Combine(_machine.Machine + ".revisions", "revision-000002.in-place"));

        Assert.Equal(ConductorColour.Pink, _machine.Open().Desk.View(EditFixture.Id)!.Design.Conductors.Single(each => each.Id == _first).Colour);
        Assert.Contains("pink", _machine.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_damaged_revision_keeps_its_bytes_and_stops_nobody()
    {
        _machine.Paint(_first, "pink");
        var damaged = Path.Combine(_machine.Machine + ".revisions", "revision-000003.json");
        File.WriteAllText(damaged, "{ half");

        Assert.True(_machine.Paint(_second, "violet").IsSaved);

        Assert.Equal(("{ half", 4), (File.ReadAllText(damaged), _machine.View.Revision));
        Assert.Equal(ConductorColour.Pink, _machine.ColourOf(_first));
    }

    [Fact]
    public async Task A_build_goes_on_with_the_machine_that_it_was_started_from()
    {
        await using var journal = await Journal.SqliteJournal.OpenAsync(Path.Combine(_machine.Machine, "..", "journal.db"), TimeProvider.System, cancellation: TestContext.Current.CancellationToken);
        var bench = new Bench(_machine.Shelf, Samples.Desk, journal, new WorkshopRecords(journal));
        var build = (await bench.StartAsync(new StartBuild(EditFixture.Id, "1", "Ada", ""), TestContext.Current.CancellationToken)).Value!;
        var before = (await bench.StateAsync(build.Id, TestContext.Current.CancellationToken))!;

        Assert.True(_machine.Desk.Save(EditFixture.Id, new SaveEdits(0, [new RemoveEdit(new("conductors", _second))], "Ada")).IsSaved);

        var after = (await bench.StateAsync(build.Id, TestContext.Current.CancellationToken))!;
        Assert.Equal(before.Steps.Select(step => step.Check.Id), after.Steps.Select(step => step.Check.Id));
        Assert.Equal(EditFixture.Id, after.Build.MachineId);
        Assert.DoesNotContain(_machine.Shelf.Find(EditFixture.Id)!.Design.Conductors, conductor => conductor.Id == _second);
    }

    [Fact]
    public void The_shelf_shows_a_new_revision_at_once_and_still_finds_what_earlier_builds_were_started_from()
    {
        var earlier = _machine.Shelf.Find(EditFixture.Id)!;

        _machine.Paint(_first, "pink");

        var now = _machine.Shelf.Find(EditFixture.Id)!;
        Assert.NotEqual(earlier.Fingerprint, now.Fingerprint);
        Assert.Equal(earlier.Design, _machine.Shelf.OfBuild(earlier.Fingerprint, earlier.Design.Name)!.Design);
        Assert.Equal(now.Design, _machine.Shelf.OfBuild(now.Fingerprint, now.Design.Name)!.Design);
    }

    [Fact]
    public async Task A_sample_is_not_changed_but_copied_and_the_copy_can_be()
    {
        var refused = _machine.Desk.Save("quarrymoor", new SaveEdits(0, [new RemoveEdit(new("conductors", "W1"))], "Ada"));
        var copy = (await _machine.Desk.CopyAsync("quarrymoor", "My router", "Ada", default)).Value!;

        Assert.Equal("not-your-own", Assert.Single(refused.Problems).Rule);
        Assert.Equal(("my-router", "My router"), (copy.Id, _machine.Desk.View(copy.Id)!.Design.Name));
        Assert.True(_machine.Desk.View(copy.Id)!.CanEdit);
        Assert.True(_machine.Desk.Save(copy.Id, new SaveEdits(1, [new FieldEdit(new("machine", "summary"), [], EditedValue.Of("Mine."))], "Ada")).IsSaved);
        Assert.Equal("Mine.", _machine.Shelf.Find("my-router")!.Design.Summary);
    }

    [Fact]
    public async Task A_machine_that_is_made_gets_its_name_and_a_free_address()
    {
        const string Text = "format: proveout-machine 1\nmachine:\n  name: Something\n";

        var first = await _machine.Desk.CreateAsync("Pennywort", Text, "Ada", default);
        var broken = await _machine.Desk.CreateAsync("Other", "format: [", "Ada", default);

        Assert.Equal(("pennywort-2", "Pennywort"), (first.Value!.Id, first.Value.Name));
        Assert.NotEmpty(broken.Diagnostics);
        Assert.DoesNotContain(_machine.Shelf.Machines, machine => machine.Id == "other");
    }

    public void Dispose() => _machine.Dispose();
}
