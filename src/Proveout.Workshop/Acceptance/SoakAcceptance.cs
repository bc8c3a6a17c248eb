namespace Proveout.Workshop;

/// <summary>The soak itself: long enough for everything to be as warm as it gets.</summary>
internal sealed class SoakAcceptance : IAcceptanceSource
{
    private const double LeastMinutes = 60;

    // What is slowest is within 2 % of its end after four time constants; a warm-up lasts about one.
    private const double Constants = 4;

    public IEnumerable<AcceptanceItem> Of(AcceptanceCase machine)
    {
        var slowest = machine.Heat.Bodies.Select(body => body.Seconds.Most).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        var minutes = Math.Max(LeastMinutes, 10 * Math.Ceiling(Constants * slowest / 60 / 10));
        yield return new(
            "soak", AcceptancePhase.Soak, "Soak",
            FormattableString.Invariant($"Enclosure closed, everything at the most that the machine is used for, {minutes:0} minutes. Stay in the room. Read the air in the bay and at the supply's inlet at the end, on thermometers that were laid in before it was closed."),
            "Air in the bay at most 50 °C, at the supply's inlet at most 45 °C, nothing smells, nothing trips, no output drifts.",
            "More air before anything else; then see which part is hottest.",
            "Common practice; the length is at least an hour, and four times the slowest warm-up.");
    }
}
