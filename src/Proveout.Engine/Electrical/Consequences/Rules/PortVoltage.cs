using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Voltage at every terminal against what it bears, and which way round.</summary>
internal sealed class PortVoltage : ILiveRule
{
    // Above this an alternating voltage on the extra-low-voltage side comes from the mains: half the limit of IEC 60364-4-41 clause 414.1.1.
    private const double MainsVolts = 25;

    private const double AboveShare = 1.02;

    // Inputs of boards clamp what high resistance brings; common practice.
    private const double InputShare = 1.3;
    private const double ReverseVolts = 0.4;

    public Severity Worst => Severity.Shock;

    public void Look(LiveLook look)
    {
        var mainsSeen = false;
        foreach (var port in look.Sights.Ports)
        {
            LookAt(look, port, look.First, ref mainsSeen);
            if (!ReferenceEquals(look.First, look.Last))
                LookAt(look, port, look.Last, ref mainsSeen);
        }
    }

    private static void LookAt(LiveLook look, LivePort port, LiveSolution solution, ref bool mainsSeen)
    {
        // What an interruption ends in time does not count as mains that stays.
        var stays = ReferenceEquals(solution, look.Last) || look.AllSeconds > TouchVoltages.LongestSeconds(look.Model);
        if (!port.IsMains && !mainsSeen && stays)
            mainsSeen = LookForMains(look, port, solution);
        var volts = Stress(port, solution);
        if (volts > port.LimitVolts * (port.IsInput ? InputShare : AboveShare) && volts > Stress(port, look.Sound) * AboveShare)
            look.Add(
                LiveFindingKind.OverVoltage, Severity.Damage, port.Terminal.ToString(), volts, port.LimitVolts, "V",
                $"{port.Terminal} sees {LiveLook.Figure(volts)} V and bears {LiveLook.Figure(port.LimitVolts)} V.");
        if (!port.IsPositive)
            return;
        var reverse = Reverse(port, solution);
        if (reverse > ReverseVolts && Reverse(port, look.Sound) < ReverseVolts)
            look.Add(
                LiveFindingKind.ReverseVoltage, Severity.Damage, port.Terminal.ToString(), -reverse, 0, "V",
                $"{port.Terminal} sees its voltage reversed, {LiveLook.Figure(-reverse)} V.");
    }

    private static bool LookForMains(LiveLook look, LivePort port, LiveSolution solution)
    {
        var volts = solution.AcVolts(port.Node).Magnitude;
        if (volts < MainsVolts || look.Sound.AcVolts(port.Node).Magnitude > MainsVolts || !BodyCurrent.IsFelt(look, port.Node, volts, out var amperes))
            return false;
        look.Add(
            LiveFindingKind.MainsOnExtraLowVoltage, Severity.Shock, port.Terminal.ToString(), volts, MainsVolts, "V",
            $"{port.Terminal} carries {LiveLook.Figure(volts)} V of mains against earth, good for {LiveLook.Figure(amperes * 1000)} mA through a person.");
        return true;
    }

    private static double Stress(LivePort port, LiveSolution solution)
    {
        var most = 0.0;
        foreach (var companion in port.Companions)
        {
            var direct = Math.Abs(solution.DcVolts(port.Node) - solution.DcVolts(companion));
            var phasor = solution.AcVolts(port.Node) - solution.AcVolts(companion);
            var alternating = Math.Sqrt((phasor.Real * phasor.Real) + (phasor.Imaginary * phasor.Imaginary));
            most = Math.Max(most, direct + (alternating * (port.IsMains ? 1 : Math.Sqrt(2))));
        }

        return most;
    }

    private static double Reverse(LivePort port, LiveSolution solution) =>
        port.Companions.Max(companion => solution.DcVolts(companion) - solution.DcVolts(port.Node));
}
