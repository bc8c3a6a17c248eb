namespace Proveout.Publish.Drawings;

/// <summary>
/// Symbols after IEC 60617 (drawn by us, from memory of the standard), along a wire from 0 to 8 mm, as path data; the second path is filled.
/// </summary>
internal static class SymbolPath
{
    /// <summary>Length of every symbol along its wire.</summary>
    public const double Length = 8;

    public static (string Lines, string Filled) Of(Symbol symbol) => symbol switch
    {
        Symbol.Resistor => ("M0 0H1.5M6.5 0H8M1.5 -1H6.5V1H1.5Z", ""),
        Symbol.Heater => ("M0 0H1.2M6.8 0H8M1.2 -1H6.8V1H1.2ZM2.6 -1V1M4 -1V1M5.4 -1V1", ""),
        Symbol.Thermistor => ("M0 0H1.5M6.5 0H8M1.5 -1H6.5V1H1.5ZM1.2 1.9H2.4L5.8 -1.8", ""),
        Symbol.Fuse => ("M0 0H8M1.6 -0.9H6.4V0.9H1.6Z", ""),
        Symbol.Breaker => ("M0 0H2.2L5.6 -1.9M5.8 0H8M5.2 -0.6L6.4 0.6M5.2 0.6L6.4 -0.6M3.4 -1.35V-0.7H4.4V-1.25", ""),
        Symbol.ThermalCutOff => ("M0 0H2.2L6.1 -1.2M5.8 0V-1.6M5.8 0H8M3.2 0.8H4V1.6H5V0.8H5.8", ""),
        Symbol.ClosingContact => ("M0 0H2.2L5.6 -1.9M5.8 0H8", ""),
        Symbol.OpeningContact => ("M0 0H2.2L6.1 -1.2M5.8 0V-1.6M5.8 0H8", ""),
        Symbol.SolidState => ("M0 0H2.2L5.6 -1.9M5.8 0H8M3 1.6H5L4 0.5ZM3 0.5H5", ""),
        Symbol.Lamp => ("M0 0H1.8M6.2 0H8M6.2 0A2.2 2.2 0 1 1 1.8 0A2.2 2.2 0 1 1 6.2 0M2.44 -1.56L5.56 1.56M2.44 1.56L5.56 -1.56", ""),
        Symbol.Coil => ("M0 0H2.8M5.2 0H8M2.8 -2H5.2V2H2.8Z", ""),
        Symbol.Diode => ("M0 0H8M5.2 -1.3V1.3M3.6 -2.4L4.6 -3.4M4.8 -2L5.8 -3", "M2.9 -1.3L5.2 0L2.9 1.3Z"),
        Symbol.Fan => ("M0 0H1.4M6.6 0H8M6.6 0A2.6 2.6 0 1 1 1.4 0A2.6 2.6 0 1 1 6.6 0", "M4 0C2.6 -0.6 2.4 -2 4 -2.1C4.7 -1.5 4.5 -0.7 4 0ZM4 0C5.4 0.6 5.6 2 4 2.1C3.3 1.5 3.5 0.7 4 0Z"),
        _ => ("M0 0H8", ""),
    };

    /// <summary>The protective-earth mark at a wire's end, IEC 60417-5019.</summary>
    public const string Earth = "M0 0H2.4M2.4 -1.7V1.7M3.2 -1.1V1.1M4 -0.5V0.5";
}
