using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Laws of edits, on random machines with comments strewn between their lines.</summary>
public sealed class EditLawTests
{
    private static readonly EditedValue Colour = EditedValue.Of("violet");

    [Fact]
    public void Adding_a_conductor_and_taking_it_out_again_gives_the_same_bytes() => ForEach(machine =>
    {
        var added = EditedMachine.Apply(machine.Text, machine.AddConductor("W900"));
        return Required(added) != machine.Text && EditedMachine.Apply(added!, new RemoveEdit(new("conductors", "W900"))) == machine.Text;
    });

    [Fact]
    public void Renaming_a_part_there_and_back_gives_the_same_bytes() => ForEach(machine =>
    {
        var part = machine.Design.Parts[0].Designation;
        var renamed = EditedMachine.Apply(machine.Text, new RenameEdit(new("parts", part), "ZZ77"));
        return EditedMachine.Apply(Required(renamed), new RenameEdit(new("parts", "ZZ77"), part)) == machine.Text;
    });

    [Fact]
    public void A_field_that_is_changed_and_changed_back_gives_the_same_bytes() => ForEach(machine => machine.Design.Conductors.All(conductor =>
    {
        var thing = new EditedThing("conductors", conductor.Id);
        var changed = EditedMachine.Apply(machine.Text, new FieldEdit(thing, ["colour"], Colour));
        var back = EditedValue.Of(machine.WordOf(conductor.Id, "colour"));
        return EditedMachine.Apply(Required(changed), new FieldEdit(thing, ["colour"], back)) == machine.Text;
    }));

    [Fact]
    public void Edits_of_different_conductors_commute() => ForEach(machine =>
    {
        var ids = machine.Design.Conductors.Select(conductor => conductor.Id).ToArray();
        if (ids.Length < 2)
            return true;
        MachineEdit first = new FieldEdit(new("conductors", ids[0]), ["colour"], Colour);
        MachineEdit second = new FieldEdit(new("conductors", ids[^1]), ["section"], EditedValue.Of("0.5 mm2"));
        return Required(EditedMachine.Apply(machine.Text, first, second)) == EditedMachine.Apply(machine.Text, second, first);
    });

    [Fact]
    public void A_spliced_file_reads_as_the_design_with_just_that_change() => ForEach(machine => machine.Design.Conductors.All(conductor =>
    {
        var text = EditedMachine.Apply(machine.Text, new FieldEdit(new("conductors", conductor.Id), ["colour"], Colour));
        var wanted = machine.Design with
        {
            Conductors = machine.Design.Conductors.Select(each => each.Id == conductor.Id ? each with { Colour = ConductorColour.Violet } : each).ToValueList(),
        };
        return EditedMachine.Read(Required(text)).Equals(wanted);
    }));

    [Fact]
    public void A_conductor_taken_out_leaves_the_design_without_it() => ForEach(machine => machine.Design.Conductors.All(conductor =>
        EditedMachine.Read(Required(EditedMachine.Apply(machine.Text, new RemoveEdit(new("conductors", conductor.Id)))))
            .Equals(machine.Design with { Conductors = machine.Design.Conductors.Where(each => each.Id != conductor.Id).ToValueList() })));

    [Fact]
    public void Taking_a_conductor_out_takes_no_comment_along_but_those_within_it() => ForEach(machine => machine.Design.Conductors.All(conductor =>
        !machine.Text.Contains($"  {conductor.Id}: {{", StringComparison.Ordinal)
        || EditedMachine.CommentsOf(Required(EditedMachine.Apply(machine.Text, new RemoveEdit(new("conductors", conductor.Id)), machine.AddConductor("W900")))) == EditedMachine.CommentsOf(machine.Text)));

    [Fact]
    public void What_two_people_change_in_different_things_is_merged_and_nothing_else_changes() => ForEach(machine =>
    {
        var ids = machine.Design.Conductors.Select(conductor => conductor.Id).ToArray();
        if (ids.Length < 2)
            return true;
        MachineEdit first = new FieldEdit(new("conductors", ids[0]), ["colour"], Colour);
        var mine = Required(EditedMachine.Apply(machine.Text, first));
        var theirs = Required(EditedMachine.Apply(machine.Text, machine.AddConductor("W900")));
        var merged = MachineText.Merge(EditedMachine.Files(machine.Text), EditedMachine.Files(mine), EditedMachine.Files(theirs));
        // Lines that lie together cannot be told apart; then nothing is merged, and both people are asked.
        return merged is null || merged[0].Text == EditedMachine.Apply(theirs, first);
    });

    [Fact]
    public void What_stands_in_braces_begins_and_ends_with_them_in_the_text() => ForEach(machine =>
    {
        var problems = new Problems();
        return Braced(EditedFile.Parse(EditedMachine.Files(machine.Text)[0], problems)!.Root)
            .All(span => machine.Text[span.Start] == '{' && machine.Text[span.End - 1] == '}');
    });

    private static IEnumerable<TextSpan> Braced(MappingNode node) =>
        [.. node.InBraces ? [node.Span] : Array.Empty<TextSpan>(), .. node.Entries.OfType<MappingNode>().SelectMany(Braced)];

    private static string Required(string? text) => text ?? throw new InvalidOperationException("The edit was refused.");

    private static void ForEach(Func<EditedMachine, bool> law) =>
        Prop.ForAll<int>(seed => law(new EditedMachine(seed))).Check(Config.QuickThrowOnFailure.WithMaxTest(150));
}
