using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Plans machines, each version of a machine once.</summary>
/// <param name="mostThrees">Threes of mistakes that whoever asks for a page waits for at most: some twenty seconds of two processors.</param>
public sealed class PlanDesk(long mostThrees = 2_000_000_000)
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

    /// <summary>What the plan of the machine does against three mistakes made together; computed at the first call, in some seconds. Refused where there are too many to wait for.</summary>
    public Outcome<TriplesView> ThreesOf(LoadedMachine machine) =>
        TriplesView.CountOf(Of(machine)) is var count && count > mostThrees
            ? Outcome.Refused<TriplesView>([new Diagnostic(
                "many-threes",
                new SourcePlace(machine.Id, 0, 0),
                FormattableString.Invariant($"{machine.Design.Name} has {count:N0} threes of mistakes that can hurt or destroy: too many to wait for at a page."),
                "`proveout plan MACHINE --triples` works through them in a terminal, where it can be stopped.")])
            : Outcome.Of(_threes.GetOrMake(machine.Fingerprint, () => TriplesView.Of(Of(machine))));
}
