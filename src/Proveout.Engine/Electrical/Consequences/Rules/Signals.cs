using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Voltages at signal terminals of boards against those of the sound machine.</summary>
internal sealed class Signals : ILiveRule
{
    // A tenth of a volt is some degrees at a temperature input, and far from any threshold of a stop input; from memory.
    private const double LeastVolts = 0.1;

    public Severity Worst => Severity.DoesNotWork;

    public void Look(LiveLook look)
    {
        foreach (var port in look.Sights.Ports)
        {
            if (!port.IsInput)
                continue;
            var sound = look.Sound.DcVolts(port.Node) - look.Sound.DcVolts(port.Companions[0]);
            var faulty = look.Last.DcVolts(port.Node) - look.Last.DcVolts(port.Companions[0]);
            if (Math.Abs(faulty - sound) > LeastVolts)
                look.Add(
                    LiveFindingKind.WrongSignal, Severity.DoesNotWork, port.Terminal.ToString(), faulty, sound, "V",
                    $"{port.Terminal} is at {LiveLook.Figure(faulty)} V instead of {LiveLook.Figure(sound)} V.");
        }
    }
}
