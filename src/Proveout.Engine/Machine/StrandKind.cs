namespace Proveout.Engine.Machine;

/// <summary>How the copper of a conductor is made up: classes of IEC 60228.</summary>
public enum StrandKind
{
    /// <summary>Class 1: one wire.</summary>
    Solid,

    /// <summary>Class 2: stranded, for fixed laying.</summary>
    Stranded,

    /// <summary>Class 5: flexible.</summary>
    Fine,

    /// <summary>Class 6: very flexible, for continuous movement.</summary>
    ExtraFine,
}
