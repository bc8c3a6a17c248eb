using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Loads that would go on when their fuse, breaker or thermal cut-off opens.</summary>
internal sealed class Bypasses : ILiveRule
{
    private const double LeastAmperes = 0.02;
    private const double SameShare = 0.01;

    public Severity Worst => Severity.Fire;

    public void Look(LiveLook look)
    {
        if (look.State.Kind != ControlStateKind.AllOutputs || look.Last.Trips.Count > 0)
            return;
        foreach (var guard in look.Sights.Guards)
        {
            var (sound, faulty) = (look.Sound.HeatingAmperes(guard.Branch.Index), look.Last.HeatingAmperes(guard.Branch.Index));
            if (sound < LeastAmperes || faulty > sound * (1 - SameShare) || look.Last.Changed.Siemens[guard.Branch.Index] == 0
                || !guard.Loads.Any(load => load.Watts(look.Last) > 0.5 * load.Watts(look.Sound)))
                continue;
            if (!guard.IsThermal && IsGuardedElsewhere(look, guard, sound - faulty))
                continue;
            var opened = look.Machine.SolveWith(look.State, new Cut(guard.Branch.Index));
            if (opened.Settled && guard.Loads.FirstOrDefault(load => load.Watts(look.Last) > 0.5 * load.Watts(look.Sound) && load.Watts(opened) > 0.5 * load.Watts(look.Sound))
                is { } load)
                look.Add(
                    LiveFindingKind.ProtectionBypassed, guard.IsThermal ? Severity.Fire : Severity.Damage, guard.Name, load.Watts(opened), 0, "W",
                    $"{load.Part.Designation} ({load.Part.Name}) goes on with {LiveLook.Figure(load.Watts(opened))} W when {guard.Name} opens: it protects nothing.");
        }
    }

    // The current has moved to another device that interrupts no later.
    private static bool IsGuardedElsewhere(LiveLook look, LiveGuard guard, double lost) => look.Sights.Guards.Any(other =>
        other.Branch.RatedAmperes is { } rated && rated <= guard.Branch.RatedAmperes
        && look.Last.HeatingAmperes(other.Branch.Index) - look.Sound.HeatingAmperes(other.Branch.Index) > lost / 2);
}
