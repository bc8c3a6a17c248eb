using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Protective devices that interrupt, supplies at their limit, and states that could not be found.</summary>
internal sealed class Interruptions : ILiveRule
{
    // From ten times its rated current a device clears a short circuit; what shorts then burns or welds. Common practice.
    private const double ShortMultiple = 10;

    public void Look(LiveLook look)
    {
        if (!look.Last.Settled && look.Sound.Settled)
            look.Add(
                LiveFindingKind.CannotTell, Severity.Damage, "machine", 0, 0, "",
                "something comes and goes (a supply at its limit, a relay that chatters); what it ends in cannot be told.");
        foreach (var trip in look.Last.Trips)
            look.Add(
                LiveFindingKind.ProtectionInterrupts, SeverityOf(look, trip), trip.Subject, trip.Amperes, trip.RatedAmperes, "A",
                $"{trip.Subject} ({trip.Name}) interrupts at {LiveLook.Figure(trip.Amperes)} A within {LiveLook.Figure(trip.Seconds)} s.");
        foreach (var (supply, sound) in look.First.Supplies.Zip(look.Sound.Supplies))
            if (supply.IsLimiting && !sound.IsLimiting)
                look.Add(
                    LiveFindingKind.SupplyOverload, Severity.DoesNotWork, supply.Part, supply.Amperes, supply.Amperes, "A",
                    $"{supply.Part} ({supply.Name}) is at its limit of {LiveLook.Figure(supply.Amperes)} A and its voltage is {LiveLook.Figure(supply.Volts)} V.");
    }

    private static Severity SeverityOf(LiveLook look, Trip trip)
    {
        if (trip.IsResidual)
            return Severity.DoesNotWork;
        var isFuse = look.Model.Context.Design.FindPart(trip.Subject)?.Type.Circuit.OfType<Fuse>()
            .FirstOrDefault(fuse => fuse.Name == trip.Name) is { Curve: not (FuseCurve.BreakerB or FuseCurve.BreakerC) };
        return isFuse || trip.Amperes > ShortMultiple * trip.RatedAmperes ? Severity.Damage : Severity.DoesNotWork;
    }
}
