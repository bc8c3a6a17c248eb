namespace Proveout.Workshop;

/// <summary>Plans machines, each version of a machine once.</summary>
public sealed class PlanDesk
{
    // A plan of a large machine takes some ten megabytes, and every revision that somebody looks at has its own.
    private const int Most = 40;

    private readonly RecentlyUsed<string, PlannedMachine> _planned = new(Most);
    private readonly RecentlyUsed<string, PlannedMachine> _live = new(Most);
    private readonly RecentlyUsed<string, EnergisingView> _energising = new(Most);
    private readonly RecentlyUsed<string, TriplesView> _threes = new(Most);

    /// <summary>The machine with its plan; computed at the first call, in a second or so.</summary>
    public PlannedMachine Of(LoadedMachine machine) =>
        _planned.GetOrMake(machine.Fingerprint, () => PlannedMachine.Of(machine));

    /// <summary>The machine with symptoms and live readings too; computed at the first call, in some seconds.</summary>
    public PlannedMachine LiveOf(LoadedMachine machine) =>
        _live.GetOrMake(machine.Fingerprint, () => Of(machine).WithLiveChecks());

    /// <summary>The order of energising the machine; computed at the first call, in some seconds.</summary>
    public EnergisingView EnergisingOf(LoadedMachine machine) =>
        _energising.GetOrMake(machine.Fingerprint, () => EnergisingViews.Of(Of(machine)));

    /// <summary>What the plan of the machine does against three mistakes made together; computed at the first call, in some seconds.</summary>
    public TriplesView ThreesOf(LoadedMachine machine) =>
        _threes.GetOrMake(machine.Fingerprint, () => TriplesView.Of(Of(machine)));
}
