using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The shapes that many keys share.</summary>
internal static class Shapes
{
    public static readonly QuantityShape<ElectricPotential> Voltage =
        Positive(Measure.Voltage, number => ElectricPotential.FromVolts(number), value => value.Volts);

    public static readonly QuantityShape<ElectricCurrent> Current =
        Positive(Measure.Current, number => ElectricCurrent.FromAmperes(number), value => value.Amperes);

    public static readonly QuantityShape<Length> Length =
        Positive(Measure.Length, number => UnitsNet.Length.FromMillimeters(number), value => value.Millimeters);

    public static readonly QuantityShape<Frequency> Frequency =
        Positive(Measure.Frequency, number => UnitsNet.Frequency.FromHertz(number), value => value.Hertz);

    public static readonly QuantityShape<ElectricCapacitance> Capacitance =
        Positive(Measure.Capacitance, number => ElectricCapacitance.FromFarads(number), value => value.Farads);

    public static readonly QuantityShape<Power> Power = Positive(Measure.Power, number => UnitsNet.Power.FromWatts(number), value => (double)value.Watts);

    public static readonly QuantityShape<Temperature> Temperature =
        Positive(Measure.Temperature, number => UnitsNet.Temperature.FromDegreesCelsius(number), value => value.DegreesCelsius);

    public static readonly OptionalShape<Temperature> AnyTemperature = new(Temperature);

    public static readonly OptionalShape<Duration> AnyTime = new(Positive(Measure.Time, number => Duration.FromSeconds(number), value => value.Seconds));

    public static readonly OptionalShape<HeatUptake> AnyUptake = new(Positive(Measure.HeatUptake, number => new HeatUptake(number), value => value.JoulesPerKelvin));

    public static readonly OptionalShape<HeatPassage> AnyPassage = new(Positive(Measure.HeatPassage, number => new HeatPassage(number), value => value.WattsPerKelvin));

    public static readonly OptionalShape<Ratio> AnyShare = new(Positive(Measure.Share, number => Ratio.FromPercent(number), value => value.Percent));

    public static readonly OptionalShape<ThermalPath> AnyThermalResistance = new(
        Positive(Measure.ThermalResistance, number => new ThermalPath(number), value => value.KelvinsPerWatt));

    public static readonly OptionalShape<Force> AnyForce = new(Positive(Measure.Force, number => Force.FromNewtons(number), value => value.Newtons));

    public static readonly QuantityShape<VolumeFlow> Flow = Positive(Measure.Flow, number => VolumeFlow.FromCubicMetersPerHour(number), value => value.CubicMetersPerHour);

    public static readonly QuantityShape<Pressure> AirPressure = Positive(Measure.Pressure, number => Pressure.FromPascals(number), value => value.Pascals);

    public static readonly OptionalShape<TemperatureDelta> AnyRise = new(Positive(Measure.Rise, number => TemperatureDelta.FromKelvins(number), value => value.Kelvins));

    public static readonly OptionalShape<Power> AnyPower = new(Power);

    public static readonly OptionalShape<ElectricCurrent> AnyCurrent = new(Current);

    public static readonly OptionalShape<ElectricPotential> AnyVoltage = new(Voltage);

    public static readonly OptionalShape<Length> AnyLength = new(Length);

    public static readonly QuantityShape<Area> Section =
        Positive(
            "cross-section",
            ["0.75 mm2", "AWG 20"],
            () => QuantityPattern.Section,
            SectionText.TryRead,
            number => Area.FromSquareMillimeters(number),
            value => SectionText.Write(value.SquareMillimeters));

    public static readonly QuantityShape<ElectricResistance> Resistance =
        Positive(
            "resistance",
            ["1 Mohm", "4k7"],
            () => QuantityPattern.Resistance,
            ResistanceText.TryRead,
            number => ElectricResistance.FromOhms(number),
            value => Measure.Resistance.Write(value.Ohms));

    public static readonly QuantityShape<ResistanceBand> Band = new(
        "resistance with a tolerance",
        ["105.8 ohm +-7 %", "5 mohm .. 100 mohm", "10 kohm .. open"],
        () => QuantityPattern.Band,
        BandText.TryRead,
        BandText.Write);

    public static readonly QuantityShape<VoltageSpan> ForwardVoltage = new(
        "pair of voltages",
        ["0.4 V .. 0.8 V"],
        () => QuantityPattern.VoltageSpan,
        VoltageSpan.TryRead,
        span => span.ToString());

    private static QuantityShape<T> Positive<T>(Measure measure, Func<double, T> make, Func<T, double> number)
        where T : struct =>
        Positive(
            measure.Name,
            [measure.Example],
            () => QuantityPattern.Of(measure),
            (string text, out double value, [NotNullWhen(false)] out QuantityFault? fault) => measure.TryRead(
                text,
                unitRequired: true,
                out value,
                out fault),
            make,
            value => measure.Write(number(value)));

    // Every quantity of a machine file is above zero: ratings, lengths, sections. Polarity is said by the order of nodes.
    private static QuantityShape<T> Positive<T>(
        string name,
        string[] examples,
        Func<string> pattern,
        QuantityParser<double> parse,
        Func<double, T> make,
        Func<T, string> format)
        where T : struct =>
        new(
            name,
            examples,
            pattern,
            (string text, out T value, [NotNullWhen(false)] out QuantityFault? fault) =>
            {
                if (parse(text, out var number, out fault) && number <= 0)
                    fault = new(
                        "out-of-range",
                        $"{Quote.Of(text)} is not above zero.",
                        $"Write a {name} above zero, such as {Quote.Of(examples[0])}.");
                value = fault is null ? make(number) : default;
                return fault is null;
            },
            format);
}
