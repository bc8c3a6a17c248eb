using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Load current that returns through protective conductors: neutral and protective conductor are joined, or have changed places.</summary>
/// <remarks>
/// A residual-current device shows it at once. Without one everything works, and metal hangs on a conductor that carries current: when supply lead or
/// outlet lose both, it stands at line voltage through the loads. That is the danger it is graded by.
/// </remarks>
internal sealed class ProtectiveCurrents : ILiveRule
{
    // IEC 60204-1 clause 8.2.6: above 10 mA a protective conductor needs measures of its own.
    private const double LimitAmperes = 0.01;

    // With both conductors lost no more flows than a person lets through: all of the same metal stands at the same voltage to far better than this.
    private const double ClearlyBelow = 0.9;

    public Severity Worst => Severity.Shock;

    public void Look(LiveLook look)
    {
        if (look.Model.Mains is null || ReferenceEquals(look.Sound.Point.AcVolts, look.Last.Point.AcVolts))
            return;
        var amperes = look.Last.ResidualAmperes;
        if (!(amperes > LimitAmperes && look.Sound.ResidualAmperes < LimitAmperes))
            return;
        var returns = $"{LiveLook.Figure(amperes)} A return through the protective conductor; {Device(look.Model, amperes)}.";
        if (LiveWithoutReturn(look) is (var metal, var volts))
            look.Add(
                LiveFindingKind.ProtectiveCurrent, Severity.Shock, metal, volts, TouchVoltages.LimitVolts, "V",
                $"{returns} Without one nothing shows, and {metal} stands at {LiveLook.Figure(volts)} V once the lead loses neutral and protective conductor.");
        else
            look.Add(LiveFindingKind.ProtectiveCurrent, Severity.DoesNotWork, "protective conductor", amperes, LimitAmperes, "A", returns);
    }

    private static string Device(LiveModel model, double amperes) => model.Mains?.ResidualAmperes switch
    {
        null => "a residual-current device before the machine would interrupt",
        { } rated when amperes < rated => $"the residual-current device before the machine must interrupt from {LiveLook.Figure(1000 * rated)} mA only",
        _ => "the residual-current device before the machine interrupts",
    };

    private static (string Metal, double Volts)? LiveWithoutReturn(LiveLook look)
    {
        ElementChange[] lost =
        [
            .. look.Machine.Changes,
            .. look.Model.Circuit.Branches
                .Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Neutral or MainsBranches.Protective })
                .Select(branch => new Cut(branch.Index)),
        ];
        var safe = new HashSet<int>();
        foreach (var exposed in look.Sights.Exposed.Where(exposed => !safe.Contains(look.Machine.MetalOf(exposed.Node))))
        {
            // Touched by a person, so that what only capacitors bring there does not count.
            var touched = new FaultyMachine(look.Model, [.. lost, new Join(exposed.Node, -1, BodyCurrent.Ohms, BodyCurrent.Ohms)], look.Machine.Stage).Solve(look.State);
            var volts = touched.AcVolts(exposed.Node).Magnitude;
            if (volts > TouchVoltages.LimitVolts)
                return (exposed.Name, volts);
            if (volts < ClearlyBelow * TouchVoltages.LimitVolts)
                safe.Add(look.Machine.MetalOf(exposed.Node));
        }

        return null;
    }
}
