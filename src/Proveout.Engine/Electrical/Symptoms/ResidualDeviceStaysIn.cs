using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>The residual-current device before the outlet stays in: plugged in and switched off, at switch-on, with every output on.</summary>
/// <remarks>A device of 30 mA stays in below 15 mA and trips from 30 mA on (IEC 61008-1, from memory). Where none is fitted nobody sees it trip.</remarks>
internal sealed class ResidualDeviceStaysIn : ILiveCheckRule
{
    private const double StaysInTo = 0.015;
    private const double TripsFrom = 0.03;

    // A fuse or breaker that opens as quickly may take the fault current away first.
    private const double AsQuickSeconds = 0.3;

    public IEnumerable<LiveObservation> Generate(LiveChecks checks) =>
        from state in checks.Model.Mains is null ? [] : States(checks)
        from observation in checks.Symptom(
            $"residual {state.Name}",
            "the residual-current device before the outlet stays in",
            state,
            "What comes in by the line returns by the neutral.",
            StaysIn,
            Seen.Wrong)
        select observation;

    private static IEnumerable<ControlState> States(LiveChecks checks) =>
        checks.Model.States.Where(state => state.Kind == ControlStateKind.Off || state == checks.Resting || state == checks.Everything);

    private static ReadingInterval StaysIn(LiveView view)
    {
        var amperes = (view.Solution.AtFirst ?? view.Solution).ResidualAmperes;
        var seen = Seen.Low(amperes, StaysInTo, TripsFrom);
        return seen == Seen.Wrong && view.Solution.Trips.Any(trip => !trip.IsResidual && trip.Seconds <= AsQuickSeconds) ? Seen.CannotTell : seen;
    }
}
