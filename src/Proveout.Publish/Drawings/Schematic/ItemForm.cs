namespace Proveout.Publish.Drawings;

/// <summary>How a strip of a block is drawn.</summary>
internal enum ItemForm
{
    /// <summary>Terminals of a box or bar.</summary>
    Ports,

    /// <summary>An element from the left side to the right.</summary>
    Lane,

    /// <summary>An upright element with both ends at the left side.</summary>
    Left,

    /// <summary>An upright element with both ends at the right side.</summary>
    Right,

    /// <summary>A machine with its windings.</summary>
    Motor,
}
