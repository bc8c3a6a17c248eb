namespace Proveout.Workshop;

/// <summary>How warm a bay gets by the end of the soak.</summary>
internal sealed class AirAcceptance : IAcceptanceSource
{
    public IEnumerable<AcceptanceItem> Of(AcceptanceCase machine) =>
        from bay in machine.Air.Bays
        where bay.Rise.WorkMost is not null
        select new AcceptanceItem(
            PlainNames.Of($"{bay.Name} air"), AcceptancePhase.Soak, $"Air in {bay.Name}",
            $"At the end of the soak measure the room, and the air that leaves {bay.Name}: hold the thermometer outside, before the opening.",
            FormattableString.Invariant($"It leaves at most {Math.Ceiling(bay.Rise.WorkMost!.Value):0} K warmer than the room; more is surely not as designed."),
            "A fan that stands or blows the wrong way, a shut opening, a clogged filter: the checks of its air tell which.",
            "Predicted by the air model (docs/methods/air.md).");
}
