using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Power of every load against what it takes in the sound machine.</summary>
internal sealed class LoadPower : ILiveRule
{
    // Heaters bear 10 % more voltage, so 1.21 times the power; common practice. Twice the power overheats.
    private const double AboveShare = 1.25;
    private const double FireShare = 1.9;
    private const double BelowShare = 0.8;
    private const double OnShare = 0.2;
    private const double OffShare = 0.05;

    // Below this nothing gets hot enough to burn; from memory.
    private const double FireWatts = 5;

    public Severity Worst => Severity.Fire;

    public void Look(LiveLook look)
    {
        foreach (var load in look.Sights.Loads)
        {
            var (sound, faulty) = (load.Watts(look.Sound), load.Watts(look.Last));
            if (sound < OffShare * load.MostWatts)
                LookUncommanded(look, load, faulty);
            else if (faulty > AboveShare * sound && faulty > AboveShare * load.MostWatts * OnShare)
                look.Add(
                    LiveFindingKind.TooMuchPower,
                    TooMuch(load, faulty),
                    load.Part.Designation, faulty, sound, "W",
                    $"{Name(load)} takes {LiveLook.Figure(faulty)} W instead of {LiveLook.Figure(sound)} W.");
            else if (faulty < BelowShare * sound && !StillWorks(load, look.Last))
                look.Add(
                    LiveFindingKind.TooLittlePower, Severity.DoesNotWork, load.Part.Designation, faulty, sound, "W",
                    $"{Name(load)} takes {LiveLook.Figure(faulty)} W instead of {LiveLook.Figure(sound)} W, so it does not do its work.");
        }
    }

    // A fan or board dies, a winding's driver holds its current; only what is made to heat goes on heating.
    private static Severity TooMuch(LiveLoad load, double watts) => (load.IsHeater, watts > FireShare * load.MostWatts) switch
    {
        (true, true) when watts > FireWatts => Severity.Fire,
        (false, false) when load.IsWinding => Severity.DoesNotWork,
        _ => Severity.Damage,
    };

    private static void LookUncommanded(LiveLook look, LiveLoad load, double faulty)
    {
        if (faulty < OnShare * load.MostWatts)
            return;
        var severity = load.IsHeater && faulty > FireWatts ? Severity.Fire
            : load.IsWinding && look.State.Kind is ControlStateKind.Off or ControlStateKind.Stopped or ControlStateKind.Released ? Severity.Damage
            : faulty > FireShare * load.MostWatts ? Severity.Damage
            : Severity.DoesNotWork;
        look.Add(
            LiveFindingKind.OnUncommanded, severity, load.Part.Designation, faulty, 0, "W",
            $"{Name(load)} takes {LiveLook.Figure(faulty)} W although nothing should feed it.");
    }

    private static bool StillWorks(LiveLoad load, LiveSolution solution) => load.WorksFromVolts > 0 && load.Volts(solution) >= load.WorksFromVolts;

    private static string Name(LiveLoad load) => $"{load.Part.Designation} ({load.Part.Name})";
}
