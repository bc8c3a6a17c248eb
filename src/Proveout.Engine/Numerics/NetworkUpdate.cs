namespace Proveout.Engine.Numerics;

/// <summary>One rank of a change: a conductance added between two nodes, or between a node and ground.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node, or <see cref="Ground"/>.</param>
/// <param name="DeltaConductance">Conductance in siemens, of either sign, not zero.</param>
internal readonly record struct NetworkUpdate(int A, int B, DoubleDouble DeltaConductance)
{
    /// <summary>Stands for the common ground that anchors lead to.</summary>
    public const int Ground = -1;
}
