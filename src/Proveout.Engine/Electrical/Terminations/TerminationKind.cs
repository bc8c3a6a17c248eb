namespace Proveout.Engine.Electrical;

/// <summary>What is put on the end of a conductor.</summary>
public enum TerminationKind
{
    /// <summary>Nothing: stripped, for a clamp that takes stranded wire as it is.</summary>
    Stripped,

    /// <summary>End sleeve (ferrule) on stranded wire, for a screw clamp.</summary>
    Ferrule,

    /// <summary>Ring lug, for a screw or stud.</summary>
    RingLug,

    /// <summary>Receptacle for a flat tab, insulated.</summary>
    Receptacle,

    /// <summary>Crimp contact of a plug housing.</summary>
    CrimpContact,

    /// <summary>Contact that cuts through the insulation of a ribbon cable.</summary>
    RibbonContact,

    /// <summary>Soldered joint.</summary>
    Solder,

    /// <summary>Ready-made: a lead that comes with the part, or a made-up plug.</summary>
    ReadyMade,

    /// <summary>Not known: the part's own instructions say.</summary>
    Unknown,
}
