using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Current in every contact, output and junction against what it bears.</summary>
internal sealed class OutputCurrent : ILiveRule
{
    private const double AboveShare = 1.25;

    public Severity Worst => Severity.Damage;

    public void Look(LiveLook look)
    {
        foreach (var rated in look.Sights.Rated)
        {
            var amperes = look.First.HeatingAmperes(rated.Branch.Index);
            if (amperes > AboveShare * rated.LimitAmperes && amperes > AboveShare * look.Sound.HeatingAmperes(rated.Branch.Index))
                look.Add(
                    LiveFindingKind.OutputOverload, Severity.Damage, rated.Name, amperes, rated.LimitAmperes, "A",
                    $"{rated.Name} carries {LiveLook.Figure(amperes)} A and bears {LiveLook.Figure(rated.LimitAmperes)} A.");
        }
    }
}
