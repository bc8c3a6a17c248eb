namespace Proveout.Engine.Electrical;

/// <summary>
/// Finds where a live circuit comes to rest: mains, supplies that live on it, direct currents, coils and switches that these move, in turn until
/// nothing changes. Not safe for two threads at once.
/// </summary>
internal sealed class LiveSolver(LiveCircuit circuit)
{
    private const int MostPasses = 40;

    // After this many passes something comes and goes; from then on things only let go, so that it comes to rest.
    private const int PassesFree = 14;
    private const int MostTrips = 8;

    private readonly DirectNetwork _direct = new(circuit);
    private readonly PhasorNetwork _phasor = new(circuit);
    private readonly LiveSwitches _switches = new(circuit);
    private readonly LiveInputs _inputs = new(circuit);

    /// <summary>Solves one state.</summary>
    /// <param name="changed">The circuit.</param>
    /// <param name="state">The state of the controls.</param>
    /// <param name="start">Where to start from; it is changed.</param>
    /// <param name="mainsStale">True when the alternating potentials of the start do not hold.</param>
    public LiveSolution Solve(ChangedCircuit changed, ControlState state, LivePoint start, bool mainsStale)
    {
        var settled = Settle(changed, state, start, mainsStale, out var worst);
        var atFirst = worst is null ? null : new LiveSolution(changed, state, worst, [], settled, null);
        var trips = new List<Trip>();
        while (trips.Count < MostTrips && LiveTrips.Next(changed, start) is { } next)
        {
            atFirst ??= new LiveSolution(changed, state, start.Copy(), [], settled, null);
            trips.Add(next.Trip);
            foreach (var branch in next.Branches)
                start.Tripped[branch] = true;
            settled &= Settle(changed, state, start, mainsStale: true, out _);
        }

        return new LiveSolution(changed, state, start, trips, settled, atFirst);
    }

    // Until the circuit is at rest only the potentials are found that its rest follows from.
    private bool Settle(ChangedCircuit changed, ControlState state, LivePoint point, bool mainsStale, out LivePoint? worst)
    {
        var settled = FindRest(changed, state, point, mainsStale, out worst);
        SolveRest(point);
        return settled;
    }

    private void SolveRest(LivePoint point)
    {
        _direct.SolveRest(point);
        _phasor.SolveRest(point);
    }

    // Of what comes and goes, the moment at which the sources give most stands for the worst.
    private bool FindRest(ChangedCircuit changed, ControlState state, LivePoint point, bool mainsStale, out LivePoint? worst)
    {
        worst = null;
        _switches.SetHands(state, point);
        var stale = mainsStale;
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var free = pass < PassesFree;
            var moved = _switches.Update(changed, point, free, ref stale);
            if (stale && circuit.Mains is not null)
                _phasor.Solve(changed, point);
            stale = false;
            moved |= _inputs.UpdateAlive(_switches.Commanded, point, free);
            if (!_direct.Solve(changed, point))
                return false;
            moved |= _inputs.UpdateTaken(changed, point, pass, ref stale);
            moved |= _switches.UpdatePositions(point, free);
            if (!moved)
            {
                worst = free ? null : worst;
                return free;
            }

            if (pass is PassesFree - 2 or PassesFree - 1 && (worst is null || _inputs.Given(changed, point) > _inputs.Given(changed, worst)))
            {
                SolveRest(point);
                worst = point.Copy();
            }
        }

        return false;
    }
}
