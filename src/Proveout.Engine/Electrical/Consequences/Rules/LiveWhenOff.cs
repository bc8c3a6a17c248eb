using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Terminals that carry mains where the sound machine is dead: behind a switch that is off, or on a load whose line is open.</summary>
internal sealed class LiveWhenOff : ILiveRule
{
    public void Look(LiveLook look)
    {
        if (look.Model.Mains is null || ReferenceEquals(look.Sound.Point.AcVolts, look.Last.Point.AcVolts))
            return;
        foreach (var (terminal, node) in look.Sights.Wired)
        {
            var volts = look.Last.AcVolts(node).Magnitude;
            if (volts < TouchVoltages.LimitVolts || look.Sound.AcVolts(node).Magnitude > TouchVoltages.LimitVolts
                || look.Model.Context.ClassOf(node) is not (NetClass.Line or NetClass.Neutral)
                || !BodyCurrent.IsFelt(look, node, volts, out _))
                continue;
            look.Add(
                LiveFindingKind.LiveWhenOff, Severity.Shock, terminal.ToString(), volts, TouchVoltages.LimitVolts, "V",
                $"{terminal} carries {LiveLook.Figure(volts)} V against earth where the sound machine has {LiveLook.Figure(look.Sound.AcVolts(node).Magnitude)} V.");
            return;
        }
    }
}
