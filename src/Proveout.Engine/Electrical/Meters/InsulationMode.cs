using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Insulation resistance at 500 V between the mains conductors, joined together, and the protective circuit, in ohms.</summary>
/// <param name="TestVolts">Test voltage.</param>
/// <param name="LeastOhms">Least resistance that passes.</param>
/// <param name="RelativeError">Error as a fraction of the reading.</param>
/// <param name="LeastOpenOhms">Least resistance at which a tester may show over range.</param>
public sealed record InsulationMode(double TestVolts, double LeastOhms, double RelativeError, double LeastOpenOhms)
    : MeterMode(
        "insulation-test",
        "Insulation tester, 500 V DC, black lead on the protective conductor. Hold until the value stands, then let the tester discharge.",
        "Ω",
        90)
{
    /// <summary>500 V and not less than 1 Mohm: IEC 60204-1 clause 18.3. Operating error up to 30 %: IEC 61557-2, from memory; some testers end at 20 Mohm.</summary>
    public static InsulationMode Tester { get; } = new(500, 1e6, 0.30, 20e6);

    /// <summary>What to mind before such a test.</summary>
    public static string Danger => "500 V at the leads. Only once every resistance reading is right; nobody touches the machine; discharge before touching.";

    /// <inheritdoc/>
    public override string Caution => $" CAUTION: {Danger}";

    /// <inheritdoc/>
    public override bool StrainsWiring => true;

    /// <inheritdoc/>
    public override ReadingInterval Shown(double low, double high) => new(
        low * (1 - RelativeError),
        high * (1 + RelativeError) >= LeastOpenOhms ? ReadingInterval.OverRange : high * (1 + RelativeError));

    /// <summary>What a sound machine shows: nothing below the least that passes, whatever its parts would allow.</summary>
    public ReadingInterval Expected(double low, double high) => Shown(low, high) is var shown && shown.Low >= LeastOhms ? shown : shown with { Low = LeastOhms };
}
