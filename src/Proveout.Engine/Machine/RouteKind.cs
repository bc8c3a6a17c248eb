namespace Proveout.Engine.Machine;

/// <summary>What carries the conductors of a route.</summary>
public enum RouteKind
{
    /// <summary>Wiring duct with a cover.</summary>
    Duct,

    /// <summary>Channel or slot of the frame.</summary>
    Channel,

    /// <summary>Drag chain: conductors that flex.</summary>
    Chain,

    /// <summary>Sleeve or bundle.</summary>
    Bundle,
}
