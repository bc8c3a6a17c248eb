using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Machine;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("24 V", 24)]
    [InlineData("24", 24)]
    [InlineData("-0,6 V", -0.6)]
    [InlineData("\u22125 V", -5)]
    [InlineData("350 mV", 0.35)]
    [InlineData("1.5kV", 1_500)]
    public void Voltages_of_either_sign_are_read(string text, double volts)
    {
        Assert.True(QuantityText.TryParseVoltage(text, out var value));
        Assert.Equal(ElectricPotential.FromVolts(volts), value);
    }

    [Fact]
    public void Other_quantities_are_read_in_the_units_of_the_model()
    {
        Assert.True(QuantityText.TryParseCurrent("1,5 A", out var current));
        Assert.True(QuantityText.TryParseCurrent("20 mA", out var small));
        Assert.True(QuantityText.TryParseLength("1.2 m", out var length));
        Assert.True(QuantityText.TryParseFrequency("1 kHz", out var frequency));
        Assert.True(QuantityText.TryParseCapacitance("100 µF", out var capacitance));
        Assert.True(QuantityText.TryParseArea("0,75 mm²", out var area));
        Assert.Equal(ElectricCurrent.FromAmperes(1.5), current);
        Assert.Equal(ElectricCurrent.FromAmperes(0.02), small);
        Assert.Equal(Length.FromMillimeters(1_200), length);
        Assert.Equal(Frequency.FromHertz(1_000), frequency);
        Assert.Equal(ElectricCapacitance.FromFarads(100e-6), capacitance);
        Assert.Equal(Area.FromSquareMillimeters(0.75), area);
    }

    [Theory]
    [InlineData("24 W")]
    [InlineData("24 MV")]
    [InlineData("V")]
    [InlineData("")]
    [InlineData("24 V V")]
    [InlineData("1e+30 V")]
    public void What_is_no_voltage_is_not_read(string text) => Assert.False(QuantityText.TryParseVoltage(text, out _));

    [Theory]
    [InlineData("100")]
    [InlineData("100 uf")]
    public void A_capacitance_needs_its_unit(string text) => Assert.False(QuantityText.TryParseCapacitance(text, out _));

    [Theory]
    [InlineData(0.0473, "47.3 mΩ")]
    [InlineData(0, "0 Ω")]
    [InlineData(12, "12 Ω")]
    [InlineData(105.84, "106 Ω")]
    [InlineData(999.9, "1 kΩ")]
    [InlineData(4_700, "4.7 kΩ")]
    [InlineData(2.2e6, "2.2 MΩ")]
    public void Resistances_are_shown_with_a_unit_and_three_digits(double ohms, string text) =>
        Assert.Equal(text, QuantityText.Format(ElectricResistance.FromOhms(ohms)));

    [Fact]
    public void Other_quantities_are_shown_in_the_units_people_use()
    {
        Assert.Equal("-24 V", QuantityText.Format(ElectricPotential.FromVolts(-24)));
        Assert.Equal("20 mA", QuantityText.Format(ElectricCurrent.FromAmperes(0.02)));
        Assert.Equal("1250 mm", QuantityText.Format(Length.FromMillimeters(1_250)));
        Assert.Equal("50 Hz", QuantityText.Format(Frequency.FromHertz(50)));
        Assert.Equal("100 µF", QuantityText.Format(ElectricCapacitance.FromFarads(100e-6)));
        Assert.Equal("0.75 mm²", QuantityText.Format(Area.FromSquareMillimeters(0.75)));
        Assert.Equal("AWG 20 (0.518 mm²)", QuantityText.Format(Area.FromSquareMillimeters(WireGauge.SquareMillimetres(20))));
    }

    [Theory]
    [InlineData(1.2345, Rounding.Down, "1.23 A")]
    [InlineData(1.2345, Rounding.Up, "1.24 A")]
    [InlineData(1.2301, Rounding.Up, "1.24 A")]
    [InlineData(1.23, Rounding.Up, "1.23 A")]
    [InlineData(0.9999, Rounding.Down, "999 mA")]
    [InlineData(0.9999, Rounding.Up, "1 A")]
    public void A_number_can_be_rounded_to_the_safe_side(double amperes, Rounding rounding, string text) =>
        Assert.Equal(text, QuantityText.Format(ElectricCurrent.FromAmperes(amperes), rounding));

    [Theory]
    [InlineData("105.8 ohm +-7 %", 98.394, 105.8, 113.206)]
    [InlineData("105.8 Ω ±7%", 98.394, 105.8, 113.206)]
    [InlineData("100 ohm +/- 1 %", 99, 100, 101)]
    [InlineData("4k7 ±5 %", 4_465, 4_700, 4_935)]
    [InlineData("1 ohm .. 4 ohm", 1, 2, 4)]
    [InlineData("1 ohm .. 3 ohm .. 4 ohm", 1, 3, 4)]
    public void Bands_are_read(string text, double low, double nominal, double high)
    {
        Assert.True(QuantityText.TryParseBand(text, out var band));
        Assert.Equal(low, band.Low.Ohms, 9);
        Assert.Equal(nominal, band.Nominal.Ohms, 9);
        Assert.Equal(high, band.High!.Value.Ohms, 9);
    }

    [Fact]
    public void A_band_may_be_open_above()
    {
        Assert.True(QuantityText.TryParseBand("10 kohm .. open", out var band));
        Assert.Equal((10_000.0, 10_000.0, null), (band.Low.Ohms, band.Nominal.Ohms, band.High?.Ohms));
        Assert.Equal("10 kΩ or more", QuantityText.Format(band));
    }

    [Fact]
    public void The_limits_of_a_band_are_shown_rounded_outwards()
    {
        Assert.True(QuantityText.TryParseBand("105.8 ohm +-7 %", out var band));
        Assert.Equal("98.3 Ω to 114 Ω", QuantityText.Format(band));
    }

    [Theory]
    [InlineData("105.8 ohm")]
    [InlineData("0 ohm .. 1 ohm")]
    [InlineData("2 ohm .. 1 ohm")]
    [InlineData("open .. 1 ohm")]
    [InlineData("1 ohm .. 2 ohm .. 3 ohm .. 4 ohm")]
    [InlineData("1 ohm +-100 %")]
    [InlineData("1 ohm +--5 %")]
    [InlineData("1 ohm +-5")]
    [InlineData("1 .. 2 ohm")]
    public void What_is_no_band_is_not_read(string text) => Assert.False(QuantityText.TryParseBand(text, out _));

    [Fact]
    public void Every_number_that_a_file_can_hold_is_written_so_that_it_reads_back_exactly() =>
        Prop.ForAll<NormalFloat>(number =>
        {
            var value = number.Get;
            var text = Measure.Current.Write(value);
            return !Measure.IsPlausible(value) || (Measure.Current.TryRead(text, true, out var read, out _) && read.Equals(value));
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(5_000));
}
