namespace Proveout.Engine.Electrical;

/// <summary>How current becomes heat in a part.</summary>
public enum LossKind
{
    /// <summary>A supply or converter takes more than it gives.</summary>
    Conversion,

    /// <summary>The outputs of motor drivers.</summary>
    Driver,

    /// <summary>Electronic switches while they conduct.</summary>
    Switch,

    /// <summary>Fuses, contacts, tracks.</summary>
    Contacts,

    /// <summary>Conductors and their joints.</summary>
    Conductors,

    /// <summary>What electronics take.</summary>
    Electronics,

    /// <summary>Coils and other resistances.</summary>
    Resistance,
}
