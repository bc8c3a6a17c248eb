using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Mains behind a switch that is off, and loads that are switched in their neutral only, so that they stay live while they rest.</summary>
/// <remarks>IEC 60204-1 clause 5.3 (isolation), IEC 60364-4-46 clause 461.2 (no switch in the neutral alone).</remarks>
internal sealed class LiveWhenOff : ILiveRule
{
    public Severity Worst => Severity.Shock;

    public void Look(LiveLook look)
    {
        if (look.Model.Mains is null || ReferenceEquals(look.Sound.Point.AcVolts, look.Last.Point.AcVolts))
            return;
        if (look.State.Kind == ControlStateKind.Off)
            LookBehindSwitch(look);
        else
            LookAtNeutral(look);
    }

    private static void LookBehindSwitch(LiveLook look)
    {
        foreach (var (terminal, node) in look.Sights.Wired)
        {
            if (!BecameLive(look, node) || !IsLineWhenOn(look, node) || !BodyCurrent.IsFelt(look, node, look.Last.AcVolts(node).Magnitude, out _))
                continue;
            Add(look, terminal.ToString(), node, "although the machine is switched off");
            return;
        }
    }

    private static void LookAtNeutral(LiveLook look)
    {
        foreach (var load in look.Sights.Loads)
            if (BecameLive(look, load.Branch.A) && BecameLive(look, load.Branch.B) && load.Watts(look.Last) < 0.05 * load.MostWatts
                && look.Model.States.Any(state => load.Watts(look.Machine.Solve(state)) > 0.5 * load.MostWatts)
                && BodyCurrent.IsFelt(look, load.Branch.A, look.Last.AcVolts(load.Branch.A).Magnitude, out _))
                Add(look, load.Part.Designation, load.Branch.A, "while it rests: it is switched in its neutral only");
    }

    // What a switch is there to cut: live in the sound machine once it is on.
    private static bool IsLineWhenOn(LiveLook look, int node) => look.Model.States.Any(state =>
        state.Kind is ControlStateKind.Idle or ControlStateKind.AllOutputs
        && look.Model.Sound(state, look.Machine.Stage).AcVolts(node).Magnitude > TouchVoltages.LimitVolts);

    private static bool BecameLive(LiveLook look, int node) =>
        look.Last.AcVolts(node).Magnitude > TouchVoltages.LimitVolts && look.Sound.AcVolts(node).Magnitude < TouchVoltages.LimitVolts;

    private static void Add(LiveLook look, string subject, int node, string why)
    {
        var volts = look.Last.AcVolts(node).Magnitude;
        look.Add(
            LiveFindingKind.LiveWhenOff, Severity.Shock, subject, volts, TouchVoltages.LimitVolts, "V",
            $"{subject} carries {LiveLook.Figure(volts)} V against earth {why}.");
    }
}
