using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>
/// A kind of quantity: its name, the units it may be written in, and how text becomes a number in the base unit and back.
/// </summary>
/// <param name="Name">What it is called, such as <c>voltage</c>.</param>
/// <param name="Example">A well-written example.</param>
/// <param name="Units">Its units, smallest first; all are decimal multiples of the base unit, whose power is 0.</param>
internal sealed record Measure(string Name, string Example, ValueList<MeasureUnit> Units)
{
    // Nothing that is built lies outside; what is written so is a slip, and arithmetic on it would overflow.
    private const double Smallest = 1e-18;
    private const double Largest = 1e18;

    /// <summary>Electrical resistance, in ohms.</summary>
    public static readonly Measure Resistance = new("resistance", "4.7 kohm",
        [new("mohm", "mΩ", -3), new("ohm", "Ω", 0), new("kohm", "kΩ", 3), new("Mohm", "MΩ", 6), new("Gohm", "GΩ", 9)]);

    /// <summary>Voltage, in volts.</summary>
    public static readonly Measure Voltage = new("voltage", "24 V",
        [new("uV", "µV", -6), new("mV", "mV", -3), new("V", "V", 0), new("kV", "kV", 3)]);

    /// <summary>Current, in amperes.</summary>
    public static readonly Measure Current = new("current", "1.5 A",
        [new("uA", "µA", -6), new("mA", "mA", -3), new("A", "A", 0), new("kA", "kA", 3)]);

    /// <summary>Length, in millimetres.</summary>
    public static readonly Measure Length = new("length", "350 mm",
        [new("mm", "mm", 0), new("cm", "cm", 1, Preferred: false), new("m", "m", 3, Preferred: false)]);

    /// <summary>Force, in newtons.</summary>
    public static readonly Measure Force = new("force", "15 N", [new("N", "N", 0)]);

    /// <summary>Cross-section, in square millimetres.</summary>
    public static readonly Measure Area = new("cross-section", "0.75 mm2", [new("mm2", "mm²", 0)]);

    /// <summary>Frequency, in hertz.</summary>
    public static readonly Measure Frequency = new("frequency", "50 Hz",
        [new("Hz", "Hz", 0), new("kHz", "kHz", 3), new("MHz", "MHz", 6)]);

    /// <summary>Capacitance, in farads.</summary>
    public static readonly Measure Capacitance = new("capacitance", "100 uF",
        [new("pF", "pF", -12), new("nF", "nF", -9), new("uF", "µF", -6), new("mF", "mF", -3), new("F", "F", 0)]);

    /// <summary>Temperature, in degrees Celsius.</summary>
    public static readonly Measure Temperature = new("temperature", "40 degC", [new("degC", "°C", 0)]);

    /// <summary>Share of a whole, in per cent.</summary>
    public static readonly Measure Share = new("share", "20 %", [new("%", "%", 0)]);

    /// <summary>Thermal resistance, in kelvin per watt.</summary>
    public static readonly Measure ThermalResistance = new("thermal resistance", "1.5 K/W", [new("K/W", "K/W", 0)]);

    /// <summary>Power, in watts.</summary>
    public static readonly Measure Power = new("power", "60 W", [new("mW", "mW", -3), new("W", "W", 0), new("kW", "kW", 3)]);

    /// <summary>Time, in seconds.</summary>
    public static readonly Measure Time = new("time", "10 s", [new("ms", "ms", -3), new("s", "s", 0)]);

    /// <summary>Heat capacity, in joules per kelvin.</summary>
    public static readonly Measure HeatUptake = new("heat capacity", "28 J/K", [new("J/K", "J/K", 0)]);

    /// <summary>Thermal conductance, in watts per kelvin.</summary>
    public static readonly Measure HeatPassage = new("thermal conductance", "0.09 W/K", [new("W/K", "W/K", 0)]);

    /// <summary>Flow of air, in cubic metres an hour.</summary>
    public static readonly Measure Flow = new("flow of air", "27 m3/h", [new("m3/h", "m³/h", 0)]);

    /// <summary>Pressure of air, in pascals.</summary>
    public static readonly Measure Pressure = new("pressure", "32 Pa", [new("Pa", "Pa", 0)]);

    /// <summary>Difference of temperatures, in kelvin.</summary>
    public static readonly Measure Rise = new("difference of temperatures", "5 K", [new("K", "K", 0)]);

    /// <summary>Reads a number and a unit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unitRequired">False when a number alone is taken in the base unit.</param>
    /// <param name="value">The value in the base unit.</param>
    /// <param name="fault">Why there is none.</param>
    public bool TryRead(string text, bool unitRequired, out double value, [NotNullWhen(false)] out QuantityFault? fault)
    {
        value = 0;
        var plain = QuantitySigns.ToPlain(text);
        var length = DecimalText.LengthAtStart(plain);
        var unit = plain[length..].TrimStart();
        if (length == 0)
            fault = NotANumber(text);
        else if (unit.Length == 0 && unitRequired)
            fault = new(
                "no-unit",
                $"{Quote.Of(text)} has no unit.",
                $"Write the {Name} with its unit, such as {Quote.Of(plain + " " + BaseUnit.Text)}.");
        else if (PowerOf(unit) is not { } power)
            fault = WrongUnit(text, plain[length..].TrimStart());
        else
            fault = IsPlausible(value = DecimalText.Parse(plain.AsSpan(0, length), power)) ? null : OutOfRange(text);
        return fault is null;
    }

    /// <summary>Text that reads as exactly this value, in the largest unit that leaves a whole digit before the point.</summary>
    public string Write(double value)
    {
        var digits = DecimalDigits.Of(value);
        var unit = UnitFor(digits);
        return $"{digits.Shift(unit.Power)} {unit.Text}";
    }

    /// <summary>Text for people, with at most so many digits.</summary>
    public string Format(double value, int digits, Rounding rounding)
    {
        var rounded = DecimalDigits.Of(value).Round(digits, rounding);
        var unit = UnitFor(rounded);
        return $"{rounded.Shift(unit.Power)} {unit.Symbol}";
    }

    /// <summary>True for a number of base units that a quantity can have.</summary>
    public static bool IsPlausible(double value) => Math.Abs(value) is 0 or (>= Smallest and <= Largest);

    private MeasureUnit BaseUnit => Units.First(unit => unit.Power == 0);

    private int? PowerOf(string unit)
    {
        if (unit.Length == 0)
            return 0;
        foreach (var known in Units)
            if (known.Text == unit)
                return known.Power;
        return null;
    }

    private MeasureUnit UnitFor(DecimalDigits digits)
    {
        if (digits.Digits == "0")
            return BaseUnit;
        var preferred = Units.Where(unit => unit.Preferred).ToList();
        return preferred.LastOrDefault(unit => unit.Power <= digits.Magnitude, preferred[0]);
    }

    private QuantityFault NotANumber(string text) =>
        new("not-a-quantity", $"{Quote.Of(text)} is not a {Name}.", $"Write a number and a unit, such as {Quote.Of(Example)}.");

    private QuantityFault WrongUnit(string text, string unit) =>
        new(
            "wrong-unit",
            $"{Quote.Of(text)} is not a {Name}: {Quote.Of(unit)} is not one of its units.",
            Spelling.Hint(unit, [.. Units.Select(known => known.Text)]));

    private QuantityFault OutOfRange(string text) =>
        new(
            "out-of-range",
            $"{Quote.Of(text)} is no {Name} that can be.",
            $"Look at its digits and its unit; write, for example, {Quote.Of(Example)}.");
}
