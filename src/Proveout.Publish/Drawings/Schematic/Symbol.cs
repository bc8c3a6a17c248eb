namespace Proveout.Publish.Drawings;

/// <summary>Graphical symbols, IEC 60617.</summary>
internal enum Symbol
{
    None,
    Resistor,
    Heater,
    Thermistor,
    Fuse,
    Breaker,
    ThermalCutOff,
    ClosingContact,
    OpeningContact,
    SolidState,
    Lamp,
    Coil,
    Diode,
    Fan,
    Earth,
}
