namespace Proveout.Engine.Faults;

/// <summary>What a fault does when the machine is first energised or moved, worst last so that values compare.</summary>
public enum Severity
{
    /// <summary>Nothing shows and nothing is lost until something else happens.</summary>
    Hidden,

    /// <summary>Something does not do what it should.</summary>
    DoesNotWork,

    /// <summary>Something is destroyed.</summary>
    Damage,

    /// <summary>Something overheats without a limit.</summary>
    Fire,

    /// <summary>Metal that a person can touch becomes live, or the protection against that is missing.</summary>
    Shock,
}
