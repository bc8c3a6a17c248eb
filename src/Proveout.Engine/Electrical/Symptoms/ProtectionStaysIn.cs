using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Each fuse and circuit-breaker stays in at switch-on, and with every output on.</summary>
/// <remarks>
/// A device may open from 1.1 times its rated current (IEC 60898-1 table 7: 1.13 holds for an hour; fuses of IEC 60127-2 hold at 1.5) and surely has
/// when its slow edge says so. Which of several overloaded devices opens first is told only when one is five times as quick as the rest.
/// </remarks>
internal sealed class ProtectionStaysIn : ILiveCheckRule
{
    private const double MayOpenFrom = 1.1;
    private const double LooksWithinSeconds = 60;
    private const double SurelyFirst = 5;

    // A branch that feeds nothing has nothing to say.
    private const double LeastAmperes = 0.001;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from device in checks.Model.Circuit.Protective
        where checks.Sound(checks.Everything).Solution.HeatingAmperes(device.Index) > LeastAmperes
        from state in new[] { checks.Resting, checks.Everything }.Distinct()
        from observation in checks.Symptom(
            $"stays-in {device.Subject} {device.Name} {(state == checks.Resting ? "switch-on" : "all-on")}",
            $"{Name(checks, device)} stays in",
            state,
            "Nothing draws more than it bears.",
            view => StaysIn(view, device),
            Seen.Right)
        select observation;

    private static string Name(LiveChecks checks, LiveBranch device) =>
        checks.Model.Context.Design.FindPart(device.Subject) is not { } part ? "the circuit-breaker before the outlet"
        : part.Type.ClassLetter == "F" && checks.Model.Circuit.Protective.Count(other => other.Subject == device.Subject) == 1 ? LoadWords.Of(part)
        : $"the {device.Name.Replace('-', ' ')} of {LoadWords.Of(part)}";

    private static ReadingInterval StaysIn(LiveView view, LiveBranch device)
    {
        var first = view.Solution.AtFirst ?? view.Solution;
        var trip = view.Solution.Trips.FirstOrDefault(trip => !trip.IsResidual && trip.Subject == device.Subject && trip.Name == device.Name);
        if (trip is not null && trip == view.Solution.Trips[0] && trip.Seconds <= LooksWithinSeconds)
            return Others(first, device).All(seconds => seconds > SurelyFirst * trip.Seconds) ? Seen.Wrong : Seen.CannotTell;
        return trip is not null || first.HeatingAmperes(device.Index) > MayOpenFrom * device.RatedAmperes ? Seen.CannotTell : Seen.Right;
    }

    // Longest times of the other devices that had to open at the same moment.
    private static IEnumerable<double> Others(LiveSolution first, LiveBranch device) =>
        first.Changed.Circuit.Protective
            .Where(other => other != device && first.HeatingAmperes(other.Index) > MayOpenFrom * other.RatedAmperes)
            .Select(other => TripCurves.SecondsAt(other.Curve, first.HeatingAmperes(other.Index) / other.RatedAmperes!.Value));
}
