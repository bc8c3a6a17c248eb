namespace Proveout.Workshop;

/// <summary>Warm-up, hold, a pulled sensor, and whether both stay as they were.</summary>
internal sealed class HeatAcceptance : IAcceptanceSource
{
    private const string Model = "Predicted by the heat model (docs/methods/heat.md).";
    private const string Practice = "Common practice.";

    public IEnumerable<AcceptanceItem> Of(AcceptanceCase machine) => machine.Heat.Bodies.SelectMany(OfBody);

    private static IEnumerable<AcceptanceItem> OfBody(HeatedView body)
    {
        yield return new(
            Id(body, "warm-up"), AcceptancePhase.FirstRun, $"Warm-up of {body.Name}",
            FormattableString.Invariant($"Heat {body.Name} from room temperature at full output to {body.TargetCelsius:0} °C and keep a log."),
            $"It shows {body.TargetCelsius:0} °C after {HeatWords.Time(body.Seconds.Least)} at the earliest and {HeatWords.Time(body.Seconds.Most)} at the latest; no other sensor rises with it.",
            "Stop. Too slow, too fast, or another sensor rises: the log's readings say which mistakes explain it.", Model);
        if (body.HoldPercent.Most < 100)
            yield return new(
                Id(body, "hold"), AcceptancePhase.FirstRun, $"Hold of {body.Name}",
                FormattableString.Invariant($"Hold {body.TargetCelsius:0} °C for ten minutes and note the mean output."),
                FormattableString.Invariant($"{Math.Floor(body.HoldPercent.Least):0} % to {Math.Ceiling(body.HoldPercent.Most):0} %; it stays within 1 K, or 2 K with a draught."),
                "More: insulation or supply. Less: the sensor does not see what it should.", Model);
        yield return new(
            Id(body, "sensor-out"), AcceptancePhase.Protection, $"Sensor of {body.Name} lost",
            $"Where its plug is outside every space with mains: heat {body.Name} to 60 °C and pull it. Anywhere else pull it with the machine isolated, close the space again, switch on and command heat.",
            "The heater goes off within 10 s, or never comes on, and stays off until somebody resets it.",
            "Do not heat again: the controller's guard is off, loosened, or set for another sensor.", Practice);
        yield return new(
            Id(body, "trend"), AcceptancePhase.EveryFiftyHours, $"Warm-up and hold of {body.Name} again",
            "The same log as on the first run, from the same room temperature.",
            "Time to target at most 15 % longer, output at hold at most 20 % more, than on the first run.",
            "A poor joint, a loose sensor, insulation that has come off: the dead checks of its circuit first.", Practice);
    }

    private static string Id(HeatedView body, string what) => PlainNames.Of($"{body.Name} {what}");
}
