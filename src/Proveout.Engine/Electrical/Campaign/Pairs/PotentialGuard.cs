using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Holds a reading high by the potentials that one volt at the leads sets up. One thread's own.</summary>
/// <remarks>
/// With potentials given to all nodes, one volt apart at the leads, the conductance is at most the sum of conductance times the square of the volts across it over all resistors, and the potentials that the
/// volt sets up make it just that (Dirichlet's principle; Doyle and Snell, Random Walks and Electric Networks, 1.3.5). Kept while others lower resistances, or add some, they still bound what the conductance
/// then is: each adds its own share. What hangs together with neither lead may have any one potential: that of the lead is taken of which fewer faults then matter.
/// </remarks>
internal sealed class PotentialGuard
{
    private const double Rounding = 1e-9;

    private readonly PairLimit _limit;
    private readonly ChangedNetwork _network;
    private readonly double[] _potential;
    private readonly int[] _stamp;
    private int _turn;
    private int _piece;
    private int _to;
    private double _ohms;
    private double _slackSiemens;

    /// <summary>Prepares to look in the network of a limit.</summary>
    /// <param name="limit">The network, and what faults change of it.</param>
    /// <param name="network">The same with the changes that the reading is held under.</param>
    public PotentialGuard(PairLimit limit, ChangedNetwork network)
    {
        (_limit, _network) = (limit, network);
        (_potential, _stamp) = (new double[limit.Network.NodeCount], new int[limit.Network.NodeCount]);
    }

    /// <summary>True when the conductance between two leads is below a value.</summary>
    public bool TryFind(int from, int to, double mostSiemens)
    {
        _ohms = _network.Ohms(from, to);
        _slackSiemens = mostSiemens - ((1 + Rounding) / _ohms);
        if (!double.IsFinite(_ohms) || _ohms <= 0 || _slackSiemens <= 0)
            return false;
        (_piece, _to) = (_network.PieceOf(from), to);
        _turn++;
        _network.TakePort(from, to);
        return true;
    }

    /// <summary>Adds the faults that may raise the conductance above the value that was given.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="together">Number of faults that may be made together at most.</param>
    public void AddLowering(List<int> faults, int together)
    {
        var at = faults.Count;
        AddLowering(faults, together, elsewhere: 0);
        List<int> others = [];
        AddLowering(others, together, elsewhere: 1);
        if (others.Count >= faults.Count - at)
            return;
        faults.RemoveRange(at, faults.Count - at);
        faults.AddRange(others);
    }

    private void AddLowering(List<int> faults, int together, double elsewhere)
    {
        var (known, volts) = (_network.PortVolts(_to), elsewhere);
        for (var fault = 0; fault < _limit.FaultCount; fault++)
        {
            var siemens = 0.0;
            foreach (var change in _limit.ChangesOf(fault))
                if (change.DeltaConductance.High > 0 && At(change.A) - At(change.B) is var across)
                    siemens += (double)change.DeltaConductance * across * across;
            if (siemens * together > _slackSiemens)
                faults.Add(fault);
        }

        double At(int node)
        {
            if (_stamp[node] != _turn)
            {
                _stamp[node] = _turn;
                _potential[node] = _network.PieceOf(node) == _piece ? Math.Clamp((_network.PortVolts(node) - known) / _ohms, 0, 1) : double.NaN;
            }

            return double.IsNaN(_potential[node]) ? volts : _potential[node];
        }
    }
}
