namespace Proveout.Web.Layout;

/// <summary>Signs drawn by ourselves; each has a shape of its own, so that none depends on colour.</summary>
public enum SignShape
{
    /// <summary>Yellow triangle: something can hurt (after the idea of ISO 3864).</summary>
    Caution,

    /// <summary>Disc with a tick.</summary>
    Passed,

    /// <summary>Square with a cross.</summary>
    Failed,

    /// <summary>Hexagon with a question mark.</summary>
    CannotTell,

    /// <summary>Ring with an arrow past it.</summary>
    Skipped,

    /// <summary>Empty ring.</summary>
    Open,
}
