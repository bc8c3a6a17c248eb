namespace Proveout.Workshop;

/// <summary>What a field may be chosen from while it is typed.</summary>
public enum RowChoices
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Part types.</summary>
    Types,

    /// <summary>Terminals of the machine's parts.</summary>
    Terminals,

    /// <summary>Routes of the machine.</summary>
    Routes,

    /// <summary>Surfaces, rails and parts that something can be mounted on.</summary>
    Mounts,
}
