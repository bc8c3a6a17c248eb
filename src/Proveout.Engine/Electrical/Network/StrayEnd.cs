namespace Proveout.Engine.Electrical;

/// <summary>An end of a junction or of insulation.</summary>
/// <param name="Place">Place of its node in the search order of the network.</param>
/// <param name="Other">Place of the node at the other end.</param>
/// <param name="Siemens">Highest conductance of insulation; 0 for a junction.</param>
/// <param name="ForwardVolts">Lowest forward voltage of a junction; 0 for insulation.</param>
/// <param name="IsFirst">True at a junction's anode, and at one of the two ends of insulation.</param>
internal readonly record struct StrayEnd(int Place, int Other, double Siemens, double ForwardVolts, bool IsFirst)
{
    /// <summary>True for insulation.</summary>
    public bool IsInsulation => Siemens > 0;
}
