namespace Proveout.Engine.Electrical;

/// <summary>What hands, coils, commands and control ports close and open.</summary>
internal sealed class LiveSwitches(LiveCircuit circuit)
{
    // Below these an opened or closed path changes nothing worth a figure, and the potentials still hold.
    private const double NoAmperes = 1e-6;
    private const double NoVolts = 1e-3;

    private readonly LiveBranch[] _moving = [.. circuit.Branches.Where(branch => branch.Kind is LiveBranchKind.Contact or LiveBranchKind.Switch)];
    private readonly bool[] _driven = Driven(circuit);
    private readonly bool[] _commanded = new bool[circuit.Commands.Count];

    /// <summary>True for each command that is given, by its number.</summary>
    public bool[] Commanded => _commanded;

    /// <summary>Puts what hands move where the state says, and gives its commands; what coils move stays.</summary>
    public void SetHands(ControlState state, LivePoint point)
    {
        Array.Clear(_commanded);
        foreach (var command in state.Commands)
            if (circuit.Commands.TryGetValue(command, out var number))
                _commanded[number] = true;
        for (var control = 0; control < circuit.Controls.Length; control++)
            if (!_driven[control])
                point.Positions[control] = circuit.Controls[control].Rest;
        foreach (var (part, name, position) in state.Positions)
        {
            var control = Array.FindIndex(circuit.Controls, candidate => candidate.Part == part && candidate.Name == name);
            point.Positions[control] = Array.IndexOf(circuit.Controls[control].Positions, position);
        }
    }

    /// <summary>Closes and opens contacts and switches; true when any moved.</summary>
    public bool Update(ChangedCircuit changed, LivePoint point, bool free, ref bool mainsStale)
    {
        var moved = false;
        foreach (var branch in _moving)
        {
            var closed = IsClosed(branch, point, free) != changed.Inverted.Contains(branch.Index);
            if (closed == point.Closed[branch.Index])
                continue;
            mainsStale |= Matters(changed, branch, point);
            point.Closed[branch.Index] = closed;
            moved = true;
        }

        return moved;
    }

    /// <summary>Moves what coils move; true when any moved.</summary>
    public bool UpdatePositions(LivePoint point, bool free)
    {
        var moved = false;
        foreach (var drive in circuit.Drives)
        {
            var volts = Math.Abs(LiveBalance.Dc(point, drive.A) - LiveBalance.Dc(point, drive.B));
            var wanted = volts >= drive.PullsInVolts && (free || point.Positions[drive.Control] == drive.Position)
                ? drive.Position
                : circuit.Controls[drive.Control].Rest;
            moved |= point.Positions[drive.Control] != wanted;
            point.Positions[drive.Control] = wanted;
        }

        return moved;
    }

    private bool IsClosed(LiveBranch branch, LivePoint point, bool free)
    {
        if (branch.Kind == LiveBranchKind.Contact)
            return (branch.ClosedAt >> point.Positions[branch.Control] & 1) != 0;
        if (branch.Port is not { } port)
            return branch.Command >= 0 && _commanded[branch.Command];
        var volts = LiveBalance.Dc(point, port.A) - LiveBalance.Dc(point, port.B);
        return volts >= port.Volts && (free || point.Closed[branch.Index]);
    }

    private bool Matters(ChangedCircuit changed, LiveBranch branch, LivePoint point) =>
        circuit.Mains is not null && changed.Siemens[branch.Index] > 0
        && (point.Closed[branch.Index]
            ? LiveBalance.AcAmperes(branch, changed.Siemens[branch.Index], point, circuit.RadiansPerSecond).Magnitude > NoAmperes
            : (LiveBalance.Ac(point, branch.A) - LiveBalance.Ac(point, branch.B)).Magnitude > NoVolts);

    private static bool[] Driven(LiveCircuit circuit)
    {
        var driven = new bool[circuit.Controls.Length];
        foreach (var drive in circuit.Drives)
            driven[drive.Control] = true;
        return driven;
    }
}
