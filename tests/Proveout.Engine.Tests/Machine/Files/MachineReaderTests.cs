using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Machine;

public sealed class MachineReaderTests
{
    [Fact]
    public void The_sample_is_read_without_a_problem()
    {
        Assert.Empty(CatalogueReader.Read([new("parts.yaml", Sample.CatalogueText)]).Diagnostics);
        Assert.Empty(Sample.Read(Sample.MachineText).Diagnostics);
    }

    [Fact]
    public void A_conductor_is_read_with_its_quantities_in_the_units_of_the_model()
    {
        var machine = Sample.Read(Sample.MachineText).Value!;

        Assert.Equal(
            new Conductor("W1", new("X1", "L-OUT"), new("E1", "A"), Area.FromSquareMillimeters(1.0), ConductorColour.Brown, Length.FromMillimeters(350), ["bay-duct"]),
            machine.Conductors[0]);
        Assert.Equal(Length.FromMillimeters(400), machine.Conductors[1].Length);
        Assert.Equal(0.82305, machine.Conductors[1].CrossSection.SquareMillimeters, 5); // AWG 18, ASTM B258
    }

    [Fact]
    public void A_part_has_its_type_its_jumpers_and_its_values()
    {
        var machine = Sample.Read(Sample.MachineText).Value!;

        Assert.Same(Sample.Catalogue.FindType("board"), machine.FindPart("A1")!.Type);
        Assert.Equal([new JumperSetting("FAN-BANK", "24 V")], machine.FindPart("A1")!.Jumpers);
        Assert.Equal([new ElementValue("element", ResistanceBand.Around(ElectricResistance.FromOhms(105.8), 0.07))], machine.FindPart("E1")!.Values);
        Assert.Equal("rear panel", machine.FindPart("X1")!.Place);
    }

    [Fact]
    public void The_mains_and_the_routes_are_read()
    {
        var machine = Sample.Read(Sample.MachineText).Value!;

        Assert.Equal(new MainsSupply(ElectricPotential.FromVolts(230), Frequency.FromHertz(50), SystemEarthing.TnS), machine.Mains);
        Assert.Equal([new Route("bay-duct", RouteKind.Duct, "Mains side.")], machine.Routes);
    }

    [Fact]
    public void The_files_of_a_folder_are_taken_together()
    {
        var machine = MachineReader.Read(
            [
                new("a.yaml", "format: proveout-machine 1\nmachine: {name: Two files}\nparts: {X1: {type: inlet, name: Inlet}}"),
                new("b.yaml", "format: proveout-machine 1\nparts: {X2: {type: inlet, name: Another}}\nconductors:\n  W1: {from: X1.L, to: X2.L, section: 1 mm2, colour: brown, length: 1 m}"),
            ],
            Sample.Catalogue);

        Assert.Empty(machine.Diagnostics);
        Assert.Equal(["X1", "X2"], machine.Value!.Parts.Select(part => part.Designation));
    }

    [Fact]
    public void A_type_of_the_machine_goes_before_one_of_the_catalogue()
    {
        var machine = Sample.Read("""
            format: proveout-machine 1
            machine: {name: Own inlet}
            types: {inlet: {name: Own, letter: X, terminals: {A: {role: line}}}}
            parts: {X1: {type: inlet, name: Inlet}}
            """);

        Assert.Equal("Own", machine.Value!.FindPart("X1")!.Type.Name);
    }

    [Theory]
    [InlineData("\n", "\r\n")]
    [InlineData("format:", "\uFEFFformat:")]
    [InlineData("format:", "%YAML 1.2\n---\nformat:")]
    public void Other_line_ends_a_byte_order_mark_and_a_directive_change_nothing(string from, string to) =>
        Assert.Equal(Sample.Read(Sample.MachineText).Value, Sample.Read(Sample.MachineText.Replace(from, to, StringComparison.Ordinal)).Value);
}
