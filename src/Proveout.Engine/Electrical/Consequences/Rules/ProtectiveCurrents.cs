using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Load current that returns through protective conductors: neutral and protective conductor are joined, or have changed places.</summary>
internal sealed class ProtectiveCurrents : ILiveRule
{
    // IEC 60204-1 clause 8.2.6: above 10 mA a protective conductor needs measures of its own.
    private const double LimitAmperes = 0.01;

    public void Look(LiveLook look)
    {
        if (look.Model.Mains is null || ReferenceEquals(look.Sound.Point.AcVolts, look.Last.Point.AcVolts))
            return;
        var amperes = look.Last.ResidualAmperes;
        if (amperes > LimitAmperes && look.Sound.ResidualAmperes < LimitAmperes)
            look.Add(
                LiveFindingKind.ProtectiveCurrent, Severity.DoesNotWork, "protective conductor", amperes, LimitAmperes, "A",
                $"{LiveLook.Figure(amperes)} A return through the protective conductor; a residual-current device before the machine would interrupt.");
    }
}
