using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

public sealed class WireListTests : IDisposable
{
    private readonly EditFixture _machine = new();

    private string List => _machine.Desk.Wires(EditFixture.Id)!;

    private string FirstLine => List.Split("\r\n")[1];

    [Theory]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void A_list_that_goes_out_and_comes_back_changes_nothing(string machine)
    {
        var import = _machine.Desk.LookAtWires(machine, new NamedText("wires.csv", _machine.Desk.Wires(machine)!), removeUnlisted: true).Value!;

        Assert.Empty(import.Edits);
        Assert.Empty(import.Changes);
    }

    [Fact]
    public void What_a_list_changes_is_shown_before_it_is_saved()
    {
        var before = _machine.Text;
        var first = _machine.View.Design.Conductors[0];
        var list = $"Wire;Colour\r\n{first.Id};pink\r\n";

        var import = Look(list).Value!;

        Assert.Equal([first.Id], import.Changed);
        Assert.Contains(import.Changes, change => change.Kind == ChangeKind.ColourChanged);
        Assert.Equal(_machine.View.Design.Conductors.Count - 1, import.Unlisted.Count);
        Assert.Equal(before, _machine.Text);
        Assert.True(_machine.Desk.Save(EditFixture.Id, new SaveEdits(0, import.Edits, "Ada")).IsSaved);
        Assert.Equal(ConductorColour.Pink, _machine.ColourOf(first.Id));
    }

    [Fact]
    public void Wires_that_are_new_are_added_and_those_not_in_the_list_go_only_when_asked()
    {
        var add = string.Join("\r\n", List.Split("\r\n").Take(2)) + "\r\n" + FirstLine.Replace(_machine.View.Design.Conductors[0].Id, "W900", StringComparison.Ordinal) + "\r\n";

        Assert.Equal((1, 0), (Look(add).Value!.Added.Count, Look(add).Value!.Removed.Count));
        Assert.Equal(_machine.View.Design.Conductors.Count - 1, Look(add, remove: true).Value!.Removed.Count);
    }

    [Theory]
    [InlineData("Wire,Colour\nNAME,sparkling\n", 2, "unknown-word")]
    [InlineData("Wire,Colour\nNAME,red\n\nNAME,blue\n", 4, "wire-twice")]
    [InlineData("Wire,Colour\nNAME\n", 2, "wrong-number-of-cells")]
    [InlineData("Wire,Colour\nNAME,\"red\n", 2, "open-quotation")]
    [InlineData("Wire,Shade\nNAME,red\n", 1, "unknown-column")]
    [InlineData("Colour\nred\n", 1, "no-such-column")]
    [InlineData("Wire,Colour\n,red\n", 2, "empty")]
    [InlineData("Wire,From,To\nW900,X9.1,X9.2\n", 2, "missing-key")]
    public void A_row_that_cannot_be_used_is_listed_with_its_line_and_a_mend(string list, int line, string rule)
    {
        var problems = Look(list.Replace("NAME", _machine.View.Design.Conductors[0].Id, StringComparison.Ordinal)).Diagnostics;

        Assert.Contains(problems, problem => problem.Rule == rule && problem.Place == new SourcePlace("wires.csv", line, 1) && problem.Mend.Length > 0);
    }

    [Theory]
    [InlineData("Wire,Shade,Maker,Price\nNAME,red,x,1\n", "unknown-column")]
    [InlineData("Shade,Maker,Price,Place,Number,Weight\nred,x,1,y,2,3\n", "no-wire-list")]
    public void A_table_of_something_else_is_refused_in_one_sentence(string list, string rule) =>
        Assert.Equal(rule, Assert.Single(Look(list).Diagnostics).Rule);

    [Fact]
    public void What_a_cell_holds_is_shown_on_one_line_and_not_longer_than_a_line()
    {
        var problem = Assert.Single(Look($"Wire,\"Sha\u202Ede\n{new string('x', 200)}\"\nW1,red\n").Diagnostics);

        Assert.True(problem.Message.Length < 120, problem.Message);
        Assert.DoesNotContain(problem.Message, sign => char.IsControl(sign) || sign == '\u202E');
    }

    [Theory]
    [InlineData("=1+2")]
    [InlineData("@x")]
    [InlineData("-3")]
    [InlineData("+3")]
    [InlineData("'quoted'")]
    [InlineData("'=x")]
    [InlineData("a \"b\", c")]
    [InlineData("two\r\nlines")]
    public void What_a_spreadsheet_would_run_is_guarded_on_the_way_out_and_comes_back_as_it_was(string text)
    {
        var line = Assert.Single(CsvText.Read(CsvText.Write([[GuardedCell.Out(text), "next"]])));

        Assert.False(GuardedCell.Out(text)[0] is '=' or '+' or '-' or '@');
        Assert.Equal([text.Replace("\r", "", StringComparison.Ordinal), "next"], line.Cells.Select(cell => GuardedCell.In(cell).Replace("\r", "", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_cable_with_a_name_like_a_formula_survives_the_round_trip()
    {
        var first = _machine.View.Design.Conductors[0].Id;
        _machine.Desk.Save(EditFixture.Id, new SaveEdits(0, [new FieldEdit(new("conductors", first), ["cable"], EditedValue.Of("=HYPERLINK(1)"))], "Ada"));

        Assert.Contains("'=HYPERLINK(1)", List, StringComparison.Ordinal);
        Assert.Empty(Look(List).Value!.Edits);
    }

    public void Dispose() => _machine.Dispose();

    private Outcome<WireImport> Look(string list, bool remove = false) => _machine.Desk.LookAtWires(EditFixture.Id, new NamedText("wires.csv", list), remove);
}
