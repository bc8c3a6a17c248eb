using System.Collections.Concurrent;

namespace Proveout.Workshop;

/// <summary>Plans machines, each version of a machine once.</summary>
public sealed class PlanDesk
{
    private readonly ConcurrentDictionary<string, Lazy<PlannedMachine>> _planned = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<PlannedMachine>> _live = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<EnergisingView>> _energising = new(StringComparer.Ordinal);

    /// <summary>The machine with its plan; computed at the first call, in a second or so.</summary>
    public PlannedMachine Of(LoadedMachine machine) =>
        _planned.GetOrAdd(machine.Fingerprint, _ => new Lazy<PlannedMachine>(() => PlannedMachine.Of(machine))).Value;

    /// <summary>The machine with symptoms and live readings too; computed at the first call, in some seconds.</summary>
    public PlannedMachine LiveOf(LoadedMachine machine) =>
        _live.GetOrAdd(machine.Fingerprint, _ => new Lazy<PlannedMachine>(() => Of(machine).WithLiveChecks())).Value;

    /// <summary>The order of energising the machine; computed at the first call, in some seconds.</summary>
    public EnergisingView EnergisingOf(LoadedMachine machine) =>
        _energising.GetOrAdd(machine.Fingerprint, _ => new Lazy<EnergisingView>(() => EnergisingViews.Of(Of(machine)))).Value;
}
