namespace Proveout.Engine.Machine;

/// <summary>What differs between two designs of a machine.</summary>
public enum ChangeKind
{
    /// <summary>A part is there that was not.</summary>
    PartAdded,

    /// <summary>A part is no longer there.</summary>
    PartRemoved,

    /// <summary>A part has another designation or name, and is otherwise the same.</summary>
    PartRenamed,

    /// <summary>A part is of another type.</summary>
    PartOfOtherType,

    /// <summary>A type has the same identifier, and is described otherwise.</summary>
    TypeDescribedAnew,

    /// <summary>A part sits elsewhere, or is turned.</summary>
    PartMoved,

    /// <summary>A part's outline, reach or spare length is given otherwise.</summary>
    PartMeasured,

    /// <summary>A jumper is in another position, fitted, or taken off.</summary>
    JumperChanged,

    /// <summary>An element of a part has another value.</summary>
    ValueChanged,

    /// <summary>A conductor is there that was not.</summary>
    ConductorAdded,

    /// <summary>A conductor is no longer there.</summary>
    ConductorRemoved,

    /// <summary>A conductor has another identifier, and the same ends.</summary>
    ConductorRenamed,

    /// <summary>An end of a conductor lands on another terminal.</summary>
    EndMoved,

    /// <summary>Two ends have changed places.</summary>
    EndsSwapped,

    /// <summary>A conductor has another cross-section.</summary>
    SectionChanged,

    /// <summary>A conductor has another colour.</summary>
    ColourChanged,

    /// <summary>A conductor has another length.</summary>
    LengthChanged,

    /// <summary>A conductor runs another way.</summary>
    WayChanged,

    /// <summary>A duct, channel, chain, surface or rail is there that was not.</summary>
    PlaceAdded,

    /// <summary>A duct, channel, chain, surface or rail is no longer there.</summary>
    PlaceRemoved,

    /// <summary>A duct, channel, chain, surface or rail is described otherwise.</summary>
    PlaceChanged,

    /// <summary>The machine is made for another supply.</summary>
    MainsChanged,

    /// <summary>Other kinds of mistake are reckoned with, or at other rates.</summary>
    MistakesChanged,

    /// <summary>The machine has another name or summary.</summary>
    TitleChanged,
}
