using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Resistance of conductors against the tables of the standards.</summary>
public sealed class ConductorResistanceTests
{
    [Theory]
    [InlineData(0.5, 39.0)]
    [InlineData(0.75, 26.0)]
    [InlineData(1.0, 19.5)]
    [InlineData(1.5, 13.3)]
    [InlineData(2.5, 7.98)]
    [InlineData(4, 4.95)]
    [InlineData(6, 3.30)]
    [InlineData(10, 1.91)]
    public void Flexible_conductors_have_the_greatest_resistance_of_IEC_60228(double squareMillimetres, double ohmsPerKilometre) =>
        Assert.Equal(ohmsPerKilometre, ConductorResistance.MaximumOhmsPerKilometre(squareMillimetres));

    // Diameter of ASTM B258, 0.127 mm * 92^((36 - n) / 39), with IEC 60028 copper: ohms per kilometre of solid wire at 20 °C.
    [Theory]
    [InlineData(30, 338.55)]
    [InlineData(28, 212.92)]
    [InlineData(26, 133.90)]
    [InlineData(24, 84.213)]
    [InlineData(22, 52.962)]
    [InlineData(20, 33.308)]
    [InlineData(18, 20.948)]
    [InlineData(16, 13.174)]
    [InlineData(14, 8.285)]
    [InlineData(12, 5.211)]
    [InlineData(10, 3.277)]
    public void Solid_copper_of_an_ASTM_B258_gauge_has_the_resistance_of_IEC_60028(int gauge, double ohmsPerKilometre)
    {
        var diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        var resistance = 1000 * ConductorResistance.CopperOhmSquareMillimetresPerMetre / (Math.PI * diameter * diameter / 4);
        Assert.Equal(1, resistance / ohmsPerKilometre, 2e-4);
    }

    [Theory]
    [InlineData(0.14, 134)]
    [InlineData(0.25, 76)]
    [InlineData(0.34, 53)]
    public void Sizes_below_the_standard_are_no_less_than_the_fine_wire_list_of_DIN_VDE_0295(double squareMillimetres, double ohmsPerKilometre) =>
        Assert.InRange(ConductorResistance.MaximumOhmsPerKilometre(squareMillimetres), ohmsPerKilometre, ohmsPerKilometre * 1.12);

    [Theory]
    [InlineData(24)]
    [InlineData(18)]
    public void The_band_of_a_conductor_holds_solid_and_stranded_copper_at_workshop_temperatures(int gauge)
    {
        var design = SmallMachine.Read(
            parts: "K1: {type: two, name: One}\nK2: {type: two, name: Two}",
            conductors: FormattableString.Invariant($"W1: {{from: K1.A, to: K2.A, section: AWG {gauge}, colour: black, length: 2 m}}"),
            types: "two: {name: Two terminals, letter: X, terminals: {A: {role: passive}, B: {role: passive}}}");
        var (low, nominal, high) = ConductorResistance.Band(Assert.Single(design.Conductors));
        var diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        var solid = 2 / 58.0 / (Math.PI * diameter * diameter / 4);

        // IEC 60228 annex A: R20 = Rt * 254.5 / (234.5 + t); from memory.
        Assert.True(low <= solid * (234.5 + 10) / 254.5 * 1.001);
        Assert.True(high >= solid * 1.13 * (234.5 + 35) / 254.5);
        Assert.InRange(nominal, low, high);
    }
}
