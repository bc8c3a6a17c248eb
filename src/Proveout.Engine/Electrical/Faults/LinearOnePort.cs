using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Tells whether two ends may change places without any effect.</summary>
/// <remarks>A network of resistances that hangs on the rest by two wires only is the same whichever way round it hangs (reciprocity of a one-port).</remarks>
internal sealed class LinearOnePort
{
    private readonly WiringNetwork _wiring;
    private readonly bool[] _conducts;
    private readonly bool[] _isWinding;

    public LinearOnePort(WiringNetwork wiring)
    {
        _wiring = wiring;
        var mated = new MachineState(false, []);
        _conducts = [.. wiring.Elements.Select(element => element.Part is not Insulation && StateNetwork.Conducts(wiring, mated, element))];
        _isWinding = [.. wiring.Nodes.Select(IsWinding)];
    }

    /// <summary>True when what lies on either side of two joints is a network of resistances that hangs on the rest by them alone.</summary>
    public bool IsBehind(NetworkElement jointOne, NetworkElement jointTwo) =>
        IsOnSide(jointOne.A, jointTwo.A, jointOne, jointTwo) || IsOnSide(jointOne.B, jointTwo.B, jointOne, jointTwo);

    private bool IsOnSide(int one, int two, NetworkElement jointOne, NetworkElement jointTwo)
    {
        var reached = new HashSet<int> { one };
        var queue = new Queue<int>(reached);
        while (queue.TryDequeue(out var node))
            foreach (var element in _wiring.ElementsAt(node))
            {
                if (!_conducts[element.Index] || element.Index == jointOne.Index || element.Index == jointTwo.Index)
                    continue;
                if (element.Part is not (null or Resistor or Fuse or Contact))
                    return false;
                var other = element.A == node ? element.B : element.A;
                if (reached.Add(other))
                    queue.Enqueue(other);
            }

        return reached.Contains(two)
            && !reached.Contains(one == jointOne.A ? jointOne.B : jointOne.A)
            && !reached.Contains(two == jointTwo.A ? jointTwo.B : jointTwo.A)
            && !reached.Any(node => _isWinding[node]);
    }

    // A winding the other way round turns the motor the other way.
    private bool IsWinding(NetworkNode at) =>
        at.Kind == NodeKind.Terminal
        && _wiring.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))!.Role == TerminalRole.Winding;
}
