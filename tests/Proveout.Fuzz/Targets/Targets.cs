namespace Proveout.Fuzz;

/// <summary>Everything that reads what others wrote.</summary>
public static class Targets
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FuzzTarget> All { get; } = [.. MachineTargets.All, .. TableTargets.All, .. TypedTargets.All, .. BinaryTargets.All, .. JournalTargets.All, FormTarget.Target];

    /// <summary>The target of that name.</summary>
    public static FuzzTarget Of(string name) => All.FirstOrDefault(target => target.Name == name)
        ?? throw new ArgumentException($"There is no target {name}; there are {string.Join(", ", All.Select(target => target.Name))}.", nameof(name));
}
