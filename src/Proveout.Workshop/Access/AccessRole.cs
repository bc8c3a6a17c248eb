namespace Proveout.Workshop;

/// <summary>What a person is at the bench.</summary>
public enum AccessRole
{
    /// <summary>Sees everything and enters nothing.</summary>
    Reader,

    /// <summary>The second person: signs off what others entered, and enters nothing else.</summary>
    Checker,

    /// <summary>Builds: enters, and signs as the builder.</summary>
    Builder,
}
