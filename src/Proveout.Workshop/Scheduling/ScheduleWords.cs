using System.Globalization;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>How schedules write what they list.</summary>
internal static class ScheduleWords
{
    /// <summary>A cross-section.</summary>
    public static string Of(Area section) => string.Create(CultureInfo.InvariantCulture, $"{section.SquareMillimeters:0.###} mm²");

    /// <summary>A length to cut, in whole millimetres, rounded up.</summary>
    public static string Of(Length length) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(Math.Round(length.Millimeters, 3)):0} mm");

    /// <summary>A length of wire in metres, rounded up to a tenth.</summary>
    public static string Metres(double millimetres) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(Math.Round(millimetres / 100, 6)) / 10:0.0} m");

    /// <summary>A current.</summary>
    public static string Of(ElectricCurrent current) => string.Create(CultureInfo.InvariantCulture, $"{current.Amperes:0.###} A");

    /// <summary>A voltage.</summary>
    public static string Of(ElectricPotential voltage) => string.Create(CultureInfo.InvariantCulture, $"{voltage.Volts:0.##} V");

    /// <summary>A whole number.</summary>
    public static string Of(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number of things.</summary>
    public static string Count(int number, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many)}");

    /// <summary>A terminal with the name of its part.</summary>
    public static string Of(MachineDesign design, TerminalReference terminal) => $"{terminal} ({design.FindPart(terminal.Part)!.Name})";
}
