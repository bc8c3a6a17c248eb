using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Electrical;
using UnitsNet;

namespace Proveout.Engine.Tests.Machine.Changes;

public sealed class DesignChangesTests
{
    private const string Types = """
        box:
          name: Box
          letter: A
          terminals: {L: {role: line}, N: {role: neutral}, PE: {role: protective-earth}, V: {role: positive}, S1: {role: signal}, S2: {role: signal}}
          circuit:
            load: {kind: resistor, between: [V, S1], value: 100 ohm +-5 %}
        strip:
          name: Strip
          letter: X
          terminals: {T1: {role: passive}, T2: {role: passive}, T3: {role: passive}, T4: {role: passive}}
        """;

    private static readonly MachineDesign Small = SmallMachine.Read(
        parts: """
            A1: {type: box, name: First}
            A2: {type: box, name: Second}
            X1: {type: strip, name: Row}
            """,
        types: Types,
        routes: "duct: {kind: duct}",
        conductors: """
            W1: {from: A1.PE, to: A2.PE, section: 0.75 mm2, colour: green-yellow, length: 300 mm}
            W2: {from: A1.L, to: X1.T1, section: 0.75 mm2, colour: brown, length: 300 mm}
            W3: {from: A1.V, to: A2.V, section: 0.75 mm2, colour: red, length: 300 mm}
            W4: {from: A1.S1, to: A2.S1, section: 0.25 mm2, colour: white, length: 300 mm}
            W5: {from: A1.S2, to: A2.S2, section: 0.25 mm2, colour: grey, length: 300 mm}
            """,
        mains: SmallMachine.Mains);

    public static TheoryData<string, ChangeKind, string> Conductors { get; } = new()
    {
        { "W4 to A2.S2", ChangeKind.EndMoved, "W4 now lands on A2.S2, not on A2.S1." },
        { "W4 section", ChangeKind.SectionChanged, "W4 now has 0.5 mm2, not 0.25 mm2." },
        { "W4 colour", ChangeKind.ColourChanged, "W4 is now black, not white." },
        { "W4 length", ChangeKind.LengthChanged, "W4 is now 310 mm long, not 300 mm." },
        { "W4 way", ChangeKind.WayChanged, "W4 now runs through duct, not free." },
        { "W4 name", ChangeKind.ConductorRenamed, "W4 from A1.S1 to A2.S1 is now called W94: change its labels." },
        { "W4 gone", ChangeKind.ConductorRemoved, "W4 (white, 0.25 mm2) from A1.S1 to A2.S1 is no longer there." },
    };

    [Theory]
    [MemberData(nameof(Conductors))]
    public void A_change_of_a_conductor_is_said_in_trade_words(string edit, ChangeKind kind, string sentence)
    {
        var change = Assert.Single(DesignChanges.Between(Small, Edited(Small, edit)));

        Assert.Equal((kind, sentence), (change.Kind, change.Sentence));
    }

    [Fact]
    public void A_design_does_not_differ_from_itself() => Assert.Empty(DesignChanges.Between(Small, Small with { }));

    [Fact]
    public void Which_end_is_written_first_is_no_difference() =>
        Assert.Empty(DesignChanges.Between(Small, Each(Small, conductor => conductor with { From = conductor.To, To = conductor.From })));

    [Fact]
    public void Two_ends_that_changed_places_are_one_change()
    {
        var swapped = Edited(Edited(Small, "W4 to A2.S2"), "W5 to A2.S1");

        var change = Assert.Single(DesignChanges.Between(Small, swapped));

        Assert.Equal(ChangeKind.EndsSwapped, change.Kind);
        Assert.Equal(["W4", "W5"], change.Subjects);
    }

    [Fact]
    public void The_most_dangerous_comes_first()
    {
        var changed = Each(Small, conductor => conductor with { Length = conductor.Length + Length.FromMillimeters(5) });

        Assert.Equal(
            [ChangeRank.Protective, ChangeRank.Mains, ChangeRank.Supply, ChangeRank.Other, ChangeRank.Other],
            DesignChanges.Between(Small, changed).Select(change => change.Rank));
    }

    [Fact]
    public void A_passive_terminal_that_line_is_wired_to_ranks_as_mains()
    {
        var longer = SmallEdit(Small, new Conductor("W6", new("X1", "T1"), new("X1", "T2"), Area.FromSquareMillimeters(1), ConductorColour.Black, Length.FromMillimeters(50), []));

        Assert.Equal(ChangeRank.Mains, Assert.Single(DesignChanges.Between(Small, longer)).Rank);
    }

    [Fact]
    public void A_part_with_another_designation_is_renamed_and_its_conductors_stay()
    {
        TerminalReference Renewed(TerminalReference terminal) => terminal.Part == "A2" ? terminal with { Part = "A9" } : terminal;
        var renamed = Each(Small, conductor => conductor with { From = Renewed(conductor.From), To = Renewed(conductor.To) }) with
        {
            Parts = Small.Parts.Select(part => part.Designation == "A2" ? part with { Designation = "A9" } : part).ToValueList(),
        };

        Assert.Equal((ChangeKind.PartRenamed, "A2, A9"), Single(Small, renamed));
    }

    [Fact]
    public void Parts_moved_of_other_value_or_type_and_types_described_anew_are_told_apart()
    {
        MachineDesign With(Func<Part, Part> edit) => Small with { Parts = Small.Parts.Select(part => part.Designation == "A1" ? edit(part) : part).ToValueList() };
        var type = Small.FindPart("A1")!.Type;

        Assert.Equal((ChangeKind.PartMoved, "A1"), Single(Small, With(part => part with { Place = "door" })));
        Assert.Equal((ChangeKind.ValueChanged, "A1"), Single(Small, With(part => part with { Values = [new("load", ResistanceBand.FromOhms(1, 2))] })));
        Assert.Equal((ChangeKind.PartOfOtherType, "A1"), Single(Small, With(part => part with { Type = type with { Id = "case" } })));
        Assert.Equal((ChangeKind.TypeDescribedAnew, "A1"), Single(Small, With(part => part with { Type = type with { Circuit = [] } })));
        Assert.Equal((ChangeKind.JumperChanged, "A1"), Single(Small, With(part => part with { Jumpers = [new("BANK", "24 V")] })));
        Assert.Equal((ChangeKind.MainsChanged, ""), Single(Small, Small with { Mains = null }));
        Assert.Equal((ChangeKind.PlaceRemoved, "duct"), Single(Small, Small with { Routes = [] }));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Random_edits_give_exactly_their_changes_and_the_way_back_mirrors_them(int seed)
    {
        var random = new Random(seed);
        string[] edits = [.. Small.Conductors.Select(conductor => $"{conductor.Id} {random.GetItems(["section", "colour", "length", "way", "gone", "name", ""], 1)[0]}")];
        var edited = edits.Aggregate(Small, Edited);

        var there = DesignChanges.Between(Small, edited);
        var back = DesignChanges.Between(edited, Small);

        Assert.Equal(
            edits.Where(edit => !edit.EndsWith(' ')).Select(KindOf).Order(),
            there.Select(change => change.Kind).Order());
        Assert.Equal(
            there.Select(change => (Mirrored(change.Kind), string.Join(' ', change.Subjects.Order(StringComparer.Ordinal)))).Order(),
            back.Select(change => (change.Kind, string.Join(' ', change.Subjects.Order(StringComparer.Ordinal)))).Order());
    }

    public static TheoryData<int> Seeds { get; } = new(Enumerable.Range(1, 50));

    private static ChangeKind KindOf(string edit) => edit.Split(' ')[1] switch
    {
        "section" => ChangeKind.SectionChanged,
        "colour" => ChangeKind.ColourChanged,
        "length" => ChangeKind.LengthChanged,
        "way" => ChangeKind.WayChanged,
        "name" => ChangeKind.ConductorRenamed,
        _ => ChangeKind.ConductorRemoved,
    };

    private static ChangeKind Mirrored(ChangeKind kind) => kind == ChangeKind.ConductorRemoved ? ChangeKind.ConductorAdded : kind;

    private static MachineDesign Edited(MachineDesign design, string edit)
    {
        var words = edit.Split(' ');
        var kept = words[1] == "gone" ? design with { Conductors = design.Conductors.Where(conductor => conductor.Id != words[0]).ToValueList() } : design;
        return Each(kept, conductor => conductor.Id != words[0] ? conductor : words[1] switch
        {
            "section" => conductor with { CrossSection = Area.FromSquareMillimeters(conductor.CrossSection.SquareMillimeters * 2) },
            "colour" => conductor with { Colour = ConductorColour.Black },
            "length" => conductor with { Length = Length.FromMillimeters(310) },
            "way" => conductor with { Route = ["duct"] },
            "name" => conductor with { Id = "W9" + words[0][1..] },
            "to" => conductor with { To = TerminalReference.TryParse(words[2])!.Value },
            _ => conductor,
        });
    }

    private static MachineDesign Each(MachineDesign design, Func<Conductor, Conductor> edit) =>
        design with { Conductors = design.Conductors.Select(edit).ToValueList() };

    private static MachineDesign SmallEdit(MachineDesign design, Conductor more) => design with { Conductors = [.. design.Conductors, more] };

    private static (ChangeKind Kind, string Subjects) Single(MachineDesign before, MachineDesign after)
    {
        var change = Assert.Single(DesignChanges.Between(before, after));
        return (change.Kind, string.Join(", ", change.Subjects));
    }
}
