namespace Proveout.Engine.Machine;

/// <summary>Types of system earthing, IEC 60364-1 clause 312.2.</summary>
public enum SystemEarthing
{
    /// <summary>Separate neutral and protective conductors throughout the system.</summary>
    TnS,

    /// <summary>Neutral and protective functions combined in a part of the system.</summary>
    TnCS,

    /// <summary>Exposed conductive parts earthed locally, independent of the source.</summary>
    TT,

    /// <summary>No point of the source earthed directly.</summary>
    IT,
}
