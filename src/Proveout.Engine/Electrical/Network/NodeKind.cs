namespace Proveout.Engine.Electrical;

/// <summary>What a node of the wiring network is.</summary>
public enum NodeKind
{
    /// <summary>A terminal of a part; on a pluggable connector, its pin.</summary>
    Terminal,

    /// <summary>A contact of the plug that mates with a pluggable connector.</summary>
    PlugContact,

    /// <summary>The end of a conductor, before its joint.</summary>
    ConductorEnd,

    /// <summary>A node inside a part.</summary>
    Inside,
}
