using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Samples;

public sealed class CatalogueTests
{
    private static readonly string[] Sources = ["common practice", "from memory", "IEC", "ISO", "EN ", "beta equation", "USB"];

    [Fact]
    public void The_catalogue_reads_without_a_diagnostic() =>
        Assert.Empty(CatalogueReader.Read(Repository.Texts(Repository.Folder("catalogue"))).Diagnostics);

    [Fact]
    public void It_holds_at_least_forty_five_types() =>
        Assert.InRange(Repository.Catalogue.Types.Count, 45, int.MaxValue);

    [Fact]
    public void Every_type_says_where_its_values_come_from() =>
        Assert.Empty(Repository.Catalogue.Types.Where(type => !Sources.Any(source => type.Note.Contains(source, StringComparison.Ordinal))).Select(type => type.Id));

    [Fact]
    public void Every_terminal_is_part_of_the_circuit_inside() =>
        Assert.Empty(
            from type in Repository.Catalogue.Types
            from terminal in type.Terminals
            where !type.Circuit.Any(element => element.A == terminal.Name || element.B == terminal.Name)
            select $"{type.Id}.{terminal.Name}");

    [Fact]
    public void Every_exposed_conductive_part_has_a_protective_terminal_and_a_bond_of_at_most_a_tenth_of_an_ohm_to_its_metal()
    {
        // 0.1 ohm is the limit of product standards for the protective circuit of an appliance; from memory.
        var bonded = from type in Repository.Catalogue.Types
                     where type.ExposedConductivePart
                     let bond = type.Circuit.OfType<Resistor>().Where(element => IsProtective(type, element.A) && IsProtective(type, element.B))
                     select (type.Id, Sound: bond.Any(element => element.Value.High is { Ohms: <= 0.1 }));

        Assert.NotEmpty(bonded);
        Assert.All(bonded, entry => Assert.True(entry.Sound, entry.Id));
    }

    [Theory]
    [InlineData("mains-silicone-heater", 230, 500)]
    [InlineData("cartridge-heater-24-40", 24, 40)]
    [InlineData("cartridge-heater-24-60", 24, 60)]
    [InlineData("plate-heater-24", 24, 150)]
    public void A_heater_has_the_resistance_of_its_voltage_and_power(string type, double volts, double watts) =>
        Assert.Equal(volts * volts / watts, Element<Resistor>(type, "element").Value.Nominal.Ohms, volts * volts / watts * 1e-3);

    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    public void A_platinum_sensor_holds_what_IEC_60751_gives_at_room_temperature(double celsius)
    {
        // IEC 60751: R = R0 (1 + A t + B t²), class B tolerance 0.30 K + 0.005 t, some 3.85 ohm per kelvin.
        var ohms = 1000 * (1 + 3.9083e-3 * celsius - 5.775e-7 * celsius * celsius);
        var tolerance = 3.86 * (0.30 + 0.005 * celsius);

        AssertHolds(Element<Resistor>("pt1000", "element").Value, ohms - tolerance, ohms + tolerance);
    }

    [Theory]
    [InlineData(3950)]
    [InlineData(4725)]
    public void A_thermistor_holds_what_the_beta_equation_gives_at_room_temperature(double beta)
    {
        const double TwentyFive = 298.15;
        double At(double celsius) => 100e3 * Math.Exp(beta * (1 / (celsius + 273.15) - 1 / TwentyFive));

        AssertHolds(Element<Resistor>("ntc-100k", "bead").Value, At(30) * 0.95, At(15) * 1.05);
    }

    [Fact]
    public void Two_terminators_make_the_sixty_ohm_of_ISO_11898_2()
    {
        var band = Element<Resistor>("bus-terminator", "terminator").Value;

        Assert.InRange(60, band.Low.Ohms / 2, band.High!.Value.Ohms / 2);
    }

    [Fact]
    public void Small_plugs_of_equal_family_and_size_stand_side_by_side_for_slips_to_exchange()
    {
        var controller = Repository.Catalogue.FindType("motion-controller-7")!;
        var equal = controller.Connectors.Where(connector => connector is { Pluggable: true, Family: "lock-2.5", Terminals.Count: 2 });

        Assert.Contains(equal, connector => connector.Name == "FAN0");
        Assert.Contains(equal, connector => connector.Name == "TEMP0");
    }

    private static bool IsProtective(PartType type, string node) => type.FindTerminal(node)?.Role == TerminalRole.ProtectiveEarth;

    private static T Element<T>(string type, string name)
        where T : CircuitElement =>
        Repository.Catalogue.FindType(type)!.Circuit.OfType<T>().Single(element => element.Name == name);

    private static void AssertHolds(ResistanceBand band, double low, double high)
    {
        Assert.InRange(low, band.Low.Ohms, high);
        Assert.InRange(high, low, band.High!.Value.Ohms);
    }
}
