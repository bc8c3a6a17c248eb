using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>One network with controls at rest and every resistance at one limit, with what each fault changes of it.</summary>
internal sealed class PairLimit
{
    private readonly EdgeChange[][] _changes;
    private readonly (int Fault, int Other)[][] _lowersAt;
    private readonly (int Fault, double AddedOhms)[][] _raisesOf;

    /// <summary>Lists what the faults change.</summary>
    public PairLimit(LimitPorts ports, IReadOnlyList<WiringFault> faults)
    {
        Network = ports.Ports.Network;
        _changes = new EdgeChange[faults.Count][];
        var lowers = new List<(int, int)>?[Network.NodeCount];
        var raises = new List<(int, double)>?[Network.EdgeCount];
        var changes = new List<EdgeChange>();
        for (var fault = 0; fault < faults.Count; fault++)
        {
            changes.Clear();
            ports.Changes.Add(faults[fault], changes);
            _changes[fault] = [.. changes];
            foreach (var change in changes)
                if (change.DeltaConductance.High > 0)
                {
                    (lowers[change.A] ??= []).Add((fault, change.B));
                    (lowers[change.B] ??= []).Add((fault, change.A));
                }
                else
                {
                    (raises[change.Edge] ??= []).Add((fault, AddedOhms(change)));
                }
        }

        _lowersAt = Array.ConvertAll(lowers, list => list?.ToArray() ?? []);
        _raisesOf = Array.ConvertAll(raises, list => list?.ToArray() ?? []);
    }

    /// <summary>The network.</summary>
    public ResistorNetwork Network { get; }

    /// <summary>Number of faults.</summary>
    public int FaultCount => _changes.Length;

    /// <summary>What a fault changes of it.</summary>
    public EdgeChange[] ChangesOf(int fault) => _changes[fault];

    /// <summary>The faults that lower a resistance, or add one, between a node and another.</summary>
    public (int Fault, int Other)[] LowersAt(int node) => _lowersAt[node];

    /// <summary>The faults that raise a resistance, and by how much; infinite when they take it away.</summary>
    public (int Fault, double AddedOhms)[] RaisesOf(int edge) => _raisesOf[edge];

    private double AddedOhms(EdgeChange change)
    {
        var before = Network.EdgeOf(change.Edge).Conductance;
        return change.TakesAway ? double.PositiveInfinity : (1 / (double)(before + change.DeltaConductance)) - (1 / before);
    }
}
