namespace Proveout.Engine.Machine;

/// <summary>What a sensor gives, and an input reads.</summary>
public enum SensorKind
{
    /// <summary>Resistance that falls with temperature.</summary>
    Ntc,

    /// <summary>Platinum, 100 ohm at 0 °C, IEC 60751.</summary>
    Pt100,

    /// <summary>Platinum, 1000 ohm at 0 °C, IEC 60751.</summary>
    Pt1000,

    /// <summary>Thermocouple, IEC 60584-1.</summary>
    Thermocouple,

    /// <summary>Bridge of strain gauges.</summary>
    Bridge,

    /// <summary>Contact without voltage.</summary>
    Contact,

    /// <summary>Output that sinks current to 0 V (NPN), IEC 60947-5-2.</summary>
    Sinking,

    /// <summary>Output that sources current from its supply (PNP), IEC 60947-5-2.</summary>
    Sourcing,
}
