using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class MachineTextTests
{
    private const string Text = """
        format: proveout-machine 1 # the format
        machine:
          name: Lamp
        parts:
          # the inlet
          X1:
            type: inlet  # with a switch
            name: Inlet
          E1: {type: plate, name: Lamp, jumpers: {J1: left}}
        routes:
          duct: {kind: duct}
        conductors:
          # live
          W1: {from: X1.L, to: E1.A, section: 1 mm2, colour: brown, route: [duct]} # short
          W2: {from: X1.N, to: E1.B, section: 1 mm2, colour: blue}
        heated:
          plate: {heater: E1}
        """;

    [Fact]
    public void A_field_is_changed_in_its_place_and_all_else_stays() =>
        Assert.Equal(Text.Replace("colour: brown", "colour: black", StringComparison.Ordinal), Edit(new FieldEdit(new("conductors", "W1"), ["colour"], EditedValue.Of("black"))));

    [Fact]
    public void A_new_field_goes_behind_the_last_one_as_the_thing_is_written()
    {
        Assert.Contains("    name: Inlet\n    place: rear\n  E1:", Edit(new FieldEdit(new("parts", "X1"), ["place"], EditedValue.Of("rear"))), StringComparison.Ordinal);
        Assert.Contains("colour: blue, length: 300 mm}", Edit(new FieldEdit(new("conductors", "W2"), ["length"], EditedValue.Of("300 mm"))), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_jumper_taken_off_takes_the_empty_list_of_jumpers_along() =>
        Assert.Contains("E1: {type: plate, name: Lamp}\n", Edit(new FieldEdit(new("parts", "E1"), ["jumpers", "J1"], null)), StringComparison.Ordinal);

    [Fact]
    public void A_jumper_on_a_part_that_has_none_yet_makes_the_list() =>
        Assert.Contains("name: Inlet\n    jumpers: {J9: 24 V}\n", Edit(new FieldEdit(new("parts", "X1"), ["jumpers", "J9"], EditedValue.Of("24 V"))), StringComparison.Ordinal);

    [Fact]
    public void A_new_section_goes_to_the_end_of_the_file() =>
        Assert.EndsWith("{heater: E1}\nsurfaces:\n  bay: {kind: x}", Edit(new AddEdit(new("surfaces", "bay"), [new("kind", EditedValue.Of("x"))])), StringComparison.Ordinal);

    [Fact]
    public void A_part_that_is_renamed_is_renamed_wherever_it_is_named()
    {
        var text = Edit(new RenameEdit(new("parts", "E1"), "E7"));

        Assert.Equal(Text.Replace("E1", "E7", StringComparison.Ordinal), text);
    }

    [Fact]
    public void A_route_that_is_renamed_is_renamed_in_the_conductors_that_run_through_it()
    {
        var text = Edit(new RenameEdit(new("routes", "duct"), "left-duct"));

        Assert.Contains("  left-duct: {kind: duct}", text, StringComparison.Ordinal);
        Assert.Contains("route: [left-duct]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_another_reader_could_take_for_something_else_gets_quotes() =>
        Assert.Contains("name: \"on: [1]\"", Edit(new FieldEdit(new("parts", "X1"), ["name"], EditedValue.Of("on: [1]"))), StringComparison.Ordinal);

    [Fact]
    public void A_conductor_goes_into_the_file_of_the_part_that_it_starts_from()
    {
        SourceText[] files = [new("a.yaml", "parts:\n  X1: {type: a}\nconductors:\n  W1: {from: X1.1}\n"), new("b.yaml", "parts:\n  X2: {type: a}\nconductors:\n  W2: {from: X2.1}\n")];

        var edited = MachineText.Apply(files, [new AddEdit(new("conductors", "W3"), [new("from", EditedValue.Of("X1.2"))])]).Value!;

        Assert.EndsWith("  W3: {from: X1.2}\n", edited[0].Text, StringComparison.Ordinal);
        Assert.Equal(files[1], edited[1]);
    }

    [Theory]
    [InlineData("parts", "X9", "edited-thing-gone")]
    [InlineData("parts", "E1", "duplicate-name")]
    public void What_cannot_be_renamed_is_refused_with_the_reason(string section, string name, string rule)
    {
        var edit = rule == "duplicate-name" ? new RenameEdit(new(section, "X1"), name) : new RenameEdit(new(section, name), "X10");

        Assert.Equal(rule, Assert.Single(MachineText.Apply([new("m.yaml", Text)], [edit]).Diagnostics).Rule);
    }

    [Fact]
    public void A_thing_between_whose_values_a_comment_stands_is_left_to_the_text_of_the_file()
    {
        const string Odd = "parts: {X1: {type: a}, # first\n  X2: {type: b}}\n";

        var outcome = MachineText.Apply([new("m.yaml", Odd)], [new RemoveEdit(new("parts", "X1"))]);

        Assert.Equal("written-unusually", Assert.Single(outcome.Diagnostics).Rule);
    }

    [Fact]
    public void What_differs_between_two_texts_is_told_thing_by_thing()
    {
        var other = Text.Replace("1 mm2, colour: blue", "2 mm2, colour: blue", StringComparison.Ordinal).Replace("name: Lamp\n", "name: Light\n", StringComparison.Ordinal).Replace("# live", "# line", StringComparison.Ordinal);

        var touched = MachineText.Touched([new("m.yaml", Text)], [new("m.yaml", other)]).Value!;

        Assert.Equal(["conductor W2", "machine name"], touched.Select(thing => thing.ToString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Two_texts_that_change_the_same_thing_are_not_merged()
    {
        string Changed(string colour) => Text.Replace("colour: brown", $"colour: {colour}", StringComparison.Ordinal);

        Assert.Null(MachineText.Merge([new("m.yaml", Text)], [new("m.yaml", Changed("red"))], [new("m.yaml", Changed("black"))]));
    }

    [Fact]
    public void Two_texts_that_both_add_at_one_place_are_merged_with_both()
    {
        string With(string line) => Text.Replace("heated:", $"  {line}\nheated:", StringComparison.Ordinal);

        var merged = MachineText.Merge([new("m.yaml", Text)], [new("m.yaml", With("W3: {colour: red}"))], [new("m.yaml", With("W4: {colour: grey}"))]);

        Assert.Contains("  W4: {colour: grey}\n  W3: {colour: red}\nheated:", Assert.Single(merged!).Text, StringComparison.Ordinal);
    }

    private static string Edit(params MachineEdit[] edits)
    {
        var outcome = MachineText.Apply([new("m.yaml", Text)], edits);
        Assert.Empty(outcome.Diagnostics);
        return outcome.Value![0].Text;
    }
}
