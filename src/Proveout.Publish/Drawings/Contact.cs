namespace Proveout.Publish.Drawings;

/// <summary>A terminal or a conductor end as drawn.</summary>
/// <param name="Name">Its name as marked.</param>
/// <param name="Connector">Name of the connector it belongs to; empty when it stands alone.</param>
/// <param name="Apart">True when its plug is pulled off.</param>
/// <param name="Reachable">False when a probe cannot touch it once the part is fitted.</param>
/// <param name="Conductors">Identifiers of the conductors that land on it.</param>
internal sealed record Contact(string Name, string Connector, bool Apart, bool Reachable, string Conductors)
{
    /// <summary>True when it does not sit right beside the contact drawn before it.</summary>
    public bool GapBefore { get; init; }

    /// <summary>True when contacts right before it are left out.</summary>
    public bool LeftOutBefore { get; init; }

    /// <summary>True when its connector goes on before it without being drawn.</summary>
    public bool ConnectorCutBefore { get; init; }

    /// <summary>True when its connector goes on after it without being drawn.</summary>
    public bool ConnectorCutAfter { get; init; }
}
