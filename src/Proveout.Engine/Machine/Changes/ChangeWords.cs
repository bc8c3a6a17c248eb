using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Quantities and lists in the sentences of changes, exactly as given, so that no difference is rounded away.</summary>
internal static class ChangeWords
{
    public static string Of(ElectricPotential voltage) => Measure.Voltage.Write(voltage.Volts);

    public static string Of(Frequency frequency) => Measure.Frequency.Write(frequency.Hertz);

    public static string Of(Area section) => Measure.Area.Write(section.SquareMillimeters);

    public static string Of(Length length) => Measure.Length.Write(length.Millimeters);

    public static string Of(SystemEarthing earthing) => earthing switch
    {
        SystemEarthing.TnS => "TN-S",
        SystemEarthing.TnCS => "TN-C-S",
        _ => earthing.ToString(),
    };

    public static string Of(Conductor conductor) =>
        $"{conductor.Id} ({ColourWords.Of(conductor.Colour)}, {Of(conductor.CrossSection)})";

    public static string Way(ValueList<string> route) => route.Count == 0 ? "free" : $"through {string.Join(", ", route)}";

    public static string Place(Part part) =>
        part.Placement is { } placement
            ? $"on {placement.On}{At(placement)}{(placement.Turn == default ? "" : $", turned {placement.Turn.ToString().ToLowerInvariant()}")}"
            : part.Place.Length > 0 ? part.Place : "a place that is not said";

    private static string At(Placement placement) =>
        placement.At is { } at ? $" at {Of(at.Across)} across, {Of(at.Up)} up"
        : placement.Along is { } along ? $" {Of(along)} along"
        : "";
}
