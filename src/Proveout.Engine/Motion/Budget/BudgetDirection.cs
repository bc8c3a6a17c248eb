namespace Proveout.Engine.Motion;

/// <summary>A direction in which the nozzle can be off.</summary>
public enum BudgetDirection
{
    /// <summary>Along the beam.</summary>
    X,

    /// <summary>Along the rails.</summary>
    Y,

    /// <summary>Up.</summary>
    Z,
}
