using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Current in every conductor against what it bears, for as long as its protective device lets it flow; and power in poor or wrong contacts.</summary>
internal sealed class ConductorHeat : ILiveRule
{
    // A clamp or contact that takes two watts overheats, one that takes half a watt ages; from memory.
    private const double FireWatts = 2;
    private const double DamageWatts = 0.5;

    public Severity Worst => Severity.Fire;

    public void Look(LiveLook look)
    {
        foreach (var conductor in look.Sights.Conductors)
            LookAt(look, conductor);
        foreach (var (a, b, siemens) in look.Last.Changed.Joins)
            LookAt(look, Between(look.First, a, b) * siemens, Between(look.Last, a, b) * siemens, 1 / siemens, "The wrong contact");
        foreach (var change in look.Machine.Changes)
            if (change is AddInSeries added && look.Last.Changed.Siemens[added.Element] is > 0 and var total)
            {
                var share = 1 - (total / look.Model.Circuit.Branches[added.Element].Siemens);
                LookAt(look, look.First.HeatingAmperes(added.Element), look.Last.HeatingAmperes(added.Element), share / total, "The poor joint");
            }
    }

    private static void LookAt(LiveLook look, LiveConductor conductor)
    {
        var (first, last) = (look.First.HeatingAmperes(conductor.Element), look.Last.HeatingAmperes(conductor.Element));
        var bears = conductor.Bears(last, double.PositiveInfinity) && conductor.Bears(first, ReferenceEquals(look.First, look.Last) ? double.PositiveInfinity : look.AllSeconds);
        if (bears || Math.Max(first, last) < 1.05 * look.Sound.HeatingAmperes(conductor.Element))
            return;
        var until = look.Last.Trips.Count == 0 || last >= first * 0.99
            ? "and nothing interrupts it"
            : $"until {look.Last.Trips[^1].Subject} interrupts after up to {LiveLook.Figure(look.AllSeconds)} s";
        look.Add(
            LiveFindingKind.ConductorOverload, Severity.Fire, conductor.Conductor.Id, Math.Max(first, last), conductor.LastingAmperes, "A",
            $"{conductor.Conductor.Id} carries {LiveLook.Figure(Math.Max(first, last))} A, bears {LiveLook.Figure(conductor.LastingAmperes)} A, {until}.");
    }

    private static double Between(LiveSolution solution, int a, int b)
    {
        var direct = solution.DcVolts(a) - solution.DcVolts(b);
        var alternating = (solution.AcVolts(a) - solution.AcVolts(b)).Magnitude;
        return Math.Sqrt((direct * direct) + (alternating * alternating));
    }

    private static void LookAt(LiveLook look, double first, double last, double ohms, string name)
    {
        var lasting = ReferenceEquals(look.First, look.Last) || look.FirstSeconds > 5 ? Math.Max(first, last) : last;
        var watts = lasting * lasting * ohms;
        if (watts > DamageWatts)
            look.Add(
                LiveFindingKind.HotJoint, watts > FireWatts ? Severity.Fire : Severity.Damage, name, watts, FireWatts, "W",
                $"{name} turns {LiveLook.Figure(watts)} W into heat at {LiveLook.Figure(lasting)} A.");
    }
}
