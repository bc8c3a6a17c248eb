namespace Proveout.Engine.Machine;

/// <summary>A unit that headings may carry.</summary>
/// <param name="Name">Our spelling.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Factor">One of it in the kind's first unit.</param>
/// <param name="Offset">Zero of it in the kind's first unit.</param>
internal sealed record ColumnUnit(string Name, string Kind, double Factor, double Offset = 0)
{
    // Exact by definition: inch 25.4 mm, degree Fahrenheit 5/9 K (BIPM, SI brochure; NIST SP 811).
    private static readonly ColumnUnit[] All =
    [
        new("mm", "length", 1), new("um", "length", 1e-3), new("cm", "length", 10), new("m", "length", 1000), new("in", "length", 25.4),
        new("degC", "temperature", 1), new("K", "temperature", 1, -273.15), new("degF", "temperature", 5.0 / 9, -32 * 5.0 / 9),
        new("s", "time", 1), new("ms", "time", 1e-3), new("min", "time", 60), new("h", "time", 3600),
        new("%", "share", 0.01), new("W", "power", 1),
        new("deg", "angle", 1), new("mrad", "angle", 0.18 / Math.PI), new("rad", "angle", 180 / Math.PI),
    ];

    private static readonly Dictionary<string, string> OtherSpellings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["µm"] = "um",
        ["μm"] = "um",
        ["micron"] = "um",
        ["microns"] = "um",
        ["inch"] = "in",
        ["inches"] = "in",
        ["\""] = "in",
        ["millimetre"] = "mm",
        ["°C"] = "degC",
        ["C"] = "degC",
        ["celsius"] = "degC",
        ["fahrenheit"] = "degF",
        ["kelvin"] = "K",
        ["°F"] = "degF",
        ["F"] = "degF",
        ["sec"] = "s",
        ["seconds"] = "s",
        ["hours"] = "h",
        ["minutes"] = "min",
        ["milliseconds"] = "ms",
        ["millis"] = "ms",
        ["watts"] = "W",
        ["°"] = "deg",
    };

    /// <summary>The unit of a spelling; null when it is none.</summary>
    public static ColumnUnit? Find(string spelling)
    {
        var name = OtherSpellings.GetValueOrDefault(spelling, spelling);
        return All.FirstOrDefault(unit => unit.Name.Equals(name, StringComparison.Ordinal)) ?? All.FirstOrDefault(unit => unit.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
    }
}
