namespace Proveout.Engine.Machine;

/// <summary>Which way a number shown to a person is rounded. A number that protects someone goes to the safe side.</summary>
public enum Rounding
{
    /// <summary>To the nearest; halves away from zero.</summary>
    Nearest,

    /// <summary>Towards zero: for what a part bears.</summary>
    Down,

    /// <summary>Away from zero: for what a part has to bear.</summary>
    Up,
}
