using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Currents in the windings of motors against those of the sound machine: size and direction.</summary>
/// <remarks>A motor whose windings all have their currents reversed turns the same way.</remarks>
internal sealed class MotorWindings : ILiveRule
{
    private const double Share = 0.15;
    private const double LeastAmperes = 0.05;

    public Severity Worst => Severity.DoesNotWork;

    public void Look(LiveLook look)
    {
        foreach (var motor in look.Sights.Loads.Where(load => load.IsWinding).GroupBy(load => load.Part.Designation))
        {
            var currents = motor.Select(load => (
                Load: load,
                Sound: look.Sound.DcAmperes(load.Branch.Index),
                Faulty: look.Last.DcAmperes(load.Branch.Index))).ToList();
            if (currents.All(item => Same(item.Sound, item.Faulty)) || (currents.Count > 1 && currents.All(item => Same(-item.Sound, item.Faulty))))
                continue;
            var (load, sound, faulty) = currents.First(item => !Same(item.Sound, item.Faulty));
            look.Add(
                LiveFindingKind.WrongMotion, Severity.DoesNotWork, motor.Key, faulty, sound, "A",
                $"{motor.Key} ({load.Part.Name}) has {LiveLook.Figure(faulty)} A in {load.Branch.Name} instead of {LiveLook.Figure(sound)} A: it turns the wrong way, or not at all.");
        }
    }

    private static bool Same(double one, double other) => Math.Abs(one - other) <= Math.Max(LeastAmperes, Share * Math.Max(Math.Abs(one), Math.Abs(other)));
}
