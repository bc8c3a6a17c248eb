using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A way of measuring: what the instrument does to a true value.</summary>
/// <remarks>A closed family: a new way is one new record and one line in <see cref="MeterModes"/>.</remarks>
/// <param name="Kind">Kind of check that it serves, lower case with hyphens.</param>
/// <param name="Setting">What to set on the instrument, in words.</param>
/// <param name="Unit">Unit of its values, as shown.</param>
/// <param name="Seconds">Time that one reading takes once the set-up stands.</param>
public abstract record MeterMode(string Kind, string Setting, string Unit, double Seconds)
{
    /// <summary>Resistance on a hand-held meter.</summary>
    public static ResistanceMode Resistance => ResistanceMode.HandHeld;

    /// <summary>Four-wire measurement of protective conductors.</summary>
    public static ResistanceMode FourWire => ResistanceMode.FourWireSource;

    /// <summary>The diode test of a hand-held meter.</summary>
    public static DiodeTestMode DiodeTest => DiodeTestMode.HandHeld;

    /// <summary>Insulation resistance with 500 V.</summary>
    public static InsulationMode Insulation => InsulationMode.Tester;

    /// <summary>What to mind, each with a space before it; empty when there is nothing.</summary>
    public virtual string Caution => "";

    /// <summary>True when it puts so much voltage on the wiring that every other reading of the set-up is to be right before.</summary>
    public virtual bool StrainsWiring => false;

    /// <summary>True values from which on the instrument may show a value on its next range, rising; none where it has but one.</summary>
    public virtual IEnumerable<double> Steps => [];

    /// <summary>The mode that serves a kind of check.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No mode serves it.</exception>
    public static MeterMode OfKind(string kind) =>
        MeterModes.All.FirstOrDefault(mode => mode.Kind == kind)
        ?? throw new ArgumentOutOfRangeException(nameof(kind), kind, "No way of measuring serves this kind of check.");

    /// <summary>What the instrument may show for a true value between two limits, both in its unit.</summary>
    /// <param name="low">Lower limit; infinite when the path is open.</param>
    /// <param name="high">Upper limit; infinite when the path may be open.</param>
    public abstract ReadingInterval Shown(double low, double high);
}
