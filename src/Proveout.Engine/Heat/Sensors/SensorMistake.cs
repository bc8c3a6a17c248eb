using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>A mistake with a temperature sensor, and the channel that it leaves.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Kind">Kind of mistake.</param>
/// <param name="Sentence">What is wrong, in a sentence.</param>
/// <param name="Prior">Probability that a careful builder makes it, common practice.</param>
/// <param name="OtherEvidence">What else shows it.</param>
/// <param name="Left">The channel that it leaves.</param>
internal sealed record SensorMistake(string Id, string Kind, string Sentence, double Prior, string OtherEvidence, ShownSensor Left)
{
    // Above this the heater is hotter than its parts were chosen for; a sound channel is within a third of it.
    private const double DangerKelvin = 15;

    private const double RoomCelsius = 20;

    // Below this what is made does not come out as it should.
    private const double ColdKelvin = 8;

    /// <summary>What it does while the controller holds a temperature, with the figure.</summary>
    public (Severity Severity, string Sentence) ConsequenceAt(double workingCelsius)
    {
        var real = Left.HottestWhileShown(workingCelsius, RoomCelsius);
        return real switch
        {
            null => (Severity.Fire, FormattableString.Invariant($"{workingCelsius:0} °C are never shown: the heater goes on at full power until a guard or the cut-off stops it.")),
            { } hot when hot > workingCelsius + DangerKelvin =>
                (Severity.Fire, FormattableString.Invariant($"While {workingCelsius:0} °C are shown it is up to {Math.Ceiling(hot):0} °C hot.")),
            RoomCelsius => (Severity.DoesNotWork, FormattableString.Invariant($"More than {workingCelsius:0} °C are shown already when cold: the heater stays off.")),
            { } cold when cold < workingCelsius - ColdKelvin =>
                (Severity.DoesNotWork, FormattableString.Invariant($"While {workingCelsius:0} °C are shown it is only {Math.Ceiling(cold):0} °C hot.")),
            _ => (Severity.Hidden, FormattableString.Invariant($"At {workingCelsius:0} °C it hardly shows.")),
        };
    }
}
