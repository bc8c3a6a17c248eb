namespace Proveout.Engine.Machine;

/// <summary>What something that is fitted later changes besides wiring.</summary>
public enum LaterEffect
{
    /// <summary>How air flows, and how warm it gets.</summary>
    Air,

    /// <summary>How fast heaters warm up, and what holds them.</summary>
    Heat,

    /// <summary>Squareness and level.</summary>
    Frame,

    /// <summary>Moving mass, belts, resonance.</summary>
    Motion,
}
