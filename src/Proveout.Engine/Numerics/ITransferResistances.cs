namespace Proveout.Engine.Numerics;

/// <summary>Transfer resistances of a network as it is before a change.</summary>
internal interface ITransferResistances
{
    /// <summary>Potential in volts of a node for one ampere fed into a pole and taken from ground.</summary>
    /// <param name="pole">A node that many are asked for.</param>
    /// <param name="node">A node of the same island.</param>
    DoubleDouble Between(int pole, int node);
}
