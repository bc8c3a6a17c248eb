using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Protective devices that interrupt, supplies at their limit, and states that could not be found.</summary>
internal sealed class Interruptions : ILiveRule
{
    // From ten times its rated current a device clears a short circuit; what shorts then burns or welds. Common practice.
    private const double ShortMultiple = 10;

    // Below half its rated residual current a residual-current device must not interrupt, from all of it it must: IEC 61008-1, from memory.
    private const double MayInterruptShare = 0.5;

    public Severity Worst => Severity.Damage;

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
        foreach (var device in look.Model.Circuit.ResidualTrips)
            LookAtResidual(look, device);
        foreach (var (supply, sound) in look.First.Supplies.Zip(look.Sound.Supplies))
            if (supply.IsLimiting && !sound.IsLimiting)
                look.Add(
                    LiveFindingKind.SupplyOverload, Severity.DoesNotWork, supply.Part, supply.Amperes, supply.Amperes, "A",
                    $"{supply.Part} ({supply.Name}) is at its limit of {LiveLook.Figure(supply.Amperes)} A and its voltage is {LiveLook.Figure(supply.Volts)} V.");
    }

    private static void LookAtResidual(LiveLook look, LiveResidualTrip device)
    {
        if (look.Last.Trips.Any(trip => trip.IsResidual && trip.Subject == device.Part))
            return;
        var least = MayInterruptShare * device.RatedAmperes;
        var (amperes, sound) = (Amperes(look.First), Amperes(look.Sound));
        if (amperes >= least && sound < least)
            look.Add(
                LiveFindingKind.ProtectionInterrupts, Severity.DoesNotWork, device.Part, amperes, device.RatedAmperes, "A",
                $"{device.Part} ({LiveTrips.ResidualName}) may interrupt at {LiveLook.Figure(1000 * amperes)} mA: "
                + $"it must from {LiveLook.Figure(1000 * device.RatedAmperes)} mA, and must not below {LiveLook.Figure(1000 * least)} mA.");

        double Amperes(LiveSolution solution) => LiveTrips.ResidualAmperes(device, solution.Changed, solution.Point);
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
