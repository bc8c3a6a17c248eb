using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Quantities as people write and read them.</summary>
/// <remarks>
/// Reading takes a decimal point or comma, and <c>Ω</c> or <c>ohm</c>, <c>µ</c> or <c>u</c>, <c>mm²</c> or <c>mm2</c>. A resistance, voltage, current,
/// length or frequency without a unit is in ohms, volts, amperes, millimetres or hertz, as typed at the bench; machine files are stricter.
/// </remarks>
public static class QuantityText
{
    private const int SensibleDigits = 3;

    /// <summary>
    /// Reads a resistance, 0 or above: <c>0.3</c>, <c>12 Ω</c>, <c>4,7 kΩ</c>, or a value code of IEC 60062 such as <c>4k7</c>.
    /// </summary>
    public static bool TryParseResistance(string text, out ElectricResistance value)
    {
        var read = ResistanceText.TryReadTyped(text, out var ohms);
        value = ElectricResistance.FromOhms(read ? ohms : 0);
        return read;
    }

    /// <summary>Reads a voltage, of either sign: <c>24 V</c>, <c>-0,6</c>, <c>350 mV</c>.</summary>
    public static bool TryParseVoltage(string text, out ElectricPotential value) =>
        TryParse(Measure.Voltage, text, false, number => ElectricPotential.FromVolts(number), out value);

    /// <summary>Reads a current, of either sign: <c>1,5 A</c>, <c>20 mA</c>.</summary>
    public static bool TryParseCurrent(string text, out ElectricCurrent value) =>
        TryParse(Measure.Current, text, false, number => ElectricCurrent.FromAmperes(number), out value);

    /// <summary>Reads a length: <c>350 mm</c>, <c>1.2 m</c>.</summary>
    public static bool TryParseLength(string text, out Length value) =>
        TryParse(Measure.Length, text, false, number => Length.FromMillimeters(number), out value);

    /// <summary>Reads a frequency: <c>50 Hz</c>, <c>1 kHz</c>.</summary>
    public static bool TryParseFrequency(string text, out Frequency value) =>
        TryParse(Measure.Frequency, text, false, number => Frequency.FromHertz(number), out value);

    /// <summary>Reads a capacitance, with its unit: <c>100 µF</c>.</summary>
    public static bool TryParseCapacitance(string text, out ElectricCapacitance value) =>
        TryParse(Measure.Capacitance, text, true, number => ElectricCapacitance.FromFarads(number), out value);

    /// <summary>Reads a cross-section, with its unit: <c>0.75 mm²</c>, or <c>AWG 20</c> by ASTM B258.</summary>
    public static bool TryParseArea(string text, out Area value)
    {
        var read = SectionText.TryRead(text, out var squareMillimetres, out _);
        value = Area.FromSquareMillimeters(read ? squareMillimetres : 0);
        return read;
    }

    /// <summary>Reads a band of resistance: <c>105.8 ohm ±7 %</c>, <c>5 mohm .. 100 mohm</c>, <c>10 kohm .. open</c>.</summary>
    public static bool TryParseBand(string text, out ResistanceBand value) => BandText.TryRead(text, out value, out _);

    /// <summary>Text for people, such as <c>4.7 kΩ</c>.</summary>
    public static string Format(ElectricResistance value, Rounding rounding = Rounding.Nearest) => Measure.Resistance.Format(
        value.Ohms,
        SensibleDigits,
        rounding);

    /// <summary>Text for people, such as <c>24 V</c>.</summary>
    public static string Format(ElectricPotential value, Rounding rounding = Rounding.Nearest) => Measure.Voltage.Format(
        value.Volts,
        SensibleDigits,
        rounding);

    /// <summary>Text for people, such as <c>1.5 A</c>.</summary>
    public static string Format(ElectricCurrent value, Rounding rounding = Rounding.Nearest) => Measure.Current.Format(
        value.Amperes,
        SensibleDigits,
        rounding);

    /// <summary>Text for people, such as <c>350 mm</c>.</summary>
    public static string Format(Length value, Rounding rounding = Rounding.Nearest) => Measure.Length.Format(
        value.Millimeters,
        SensibleDigits + 1,
        rounding);

    /// <summary>Text for people, such as <c>50 Hz</c>.</summary>
    public static string Format(Frequency value, Rounding rounding = Rounding.Nearest) => Measure.Frequency.Format(
        value.Hertz,
        SensibleDigits,
        rounding);

    /// <summary>Text for people, such as <c>100 µF</c>.</summary>
    public static string Format(ElectricCapacitance value, Rounding rounding = Rounding.Nearest) => Measure.Capacitance.Format(
        value.Farads,
        SensibleDigits,
        rounding);

    /// <summary>Text for people, such as <c>0.75 mm²</c> or <c>AWG 20 (0.518 mm²)</c>.</summary>
    public static string Format(Area value, Rounding rounding = Rounding.Nearest)
    {
        var text = Measure.Area.Format(value.SquareMillimeters, SensibleDigits, rounding);
        return WireGauge.GaugeOf(value.SquareMillimeters) is { } gauge ? $"AWG {gauge} ({text})" : text;
    }

    /// <summary>
    /// Text for people, such as <c>98.4 Ω to 113 Ω</c> or <c>10 kΩ or more</c>. The limits are rounded outwards, so that no sound part is
    /// refused.
    /// </summary>
    public static string Format(ResistanceBand value)
    {
        var low = Format(value.Low, Rounding.Down);
        return value.High is { } high ? $"{low} to {Format(high, Rounding.Up)}" : $"{low} or more";
    }

    private static bool TryParse<T>(Measure measure, string text, bool unitRequired, Func<double, T> make, out T value)
    {
        var read = measure.TryRead(text, unitRequired, out var number, out _);
        value = make(read ? number : 0);
        return read;
    }
}
