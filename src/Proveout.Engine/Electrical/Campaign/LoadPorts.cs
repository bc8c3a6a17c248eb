using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ports beside which junctions and insulation count, one ohm or more and open ones, by the search order of <see cref="Bridges"/>.</summary>
internal sealed class LoadPorts
{
    // As PortWorker.Same has it where nothing else is said.
    private const double UnseenVolts = 1e-9;

    private readonly Islands _islands;
    private readonly Bridges _bridges;
    private readonly StrayPieces _strays;
    private readonly OpenEnd[] _open;
    private readonly int[] _firstOpenAt;
    private readonly ClosedPort[] _closed;
    private readonly int[] _firstClosedAt;

    /// <summary>Sorts them.</summary>
    /// <param name="ports">The ports.</param>
    /// <param name="strays">What of junctions and insulation touches each island.</param>
    /// <param name="modeOf">How each port is measured.</param>
    /// <param name="isCounted">Which of the ports are listed; all when null.</param>
    public LoadPorts(Ports ports, StrayPieces strays, Func<int, MeterMode> modeOf, Predicate<int>? isCounted = null)
    {
        (_islands, _bridges, _strays) = (ports.Network.Islands, ports.Network.Bridges, strays);
        var counted = Enumerable.Range(0, ports.Pairs.Length).Where(port => ports.Ohms(port) >= StrayPieces.NegligibleOhms && isCounted?.Invoke(port) != false).ToArray();
        _open = [.. counted.Where(port => !ports.IsOneIsland(port)).SelectMany(OpenEnds).OrderBy(end => end.Place).ThenBy(end => end.Port)];
        _closed = [.. counted.Where(ports.IsOneIsland).Select(Closed).OrderBy(end => end.Place).ThenBy(end => end.Port)];
        _firstOpenAt = _bridges.FirstAt(_open.Select(end => end.Place));
        _firstClosedAt = _bridges.FirstAt(_closed.Select(end => end.Place));

        int PlaceOf(int node) => _bridges.NumberOf(ports.Nodes[node]);

        IEnumerable<OpenEnd> OpenEnds(int port)
        {
            var ((a, b), (ofA, ofB)) = (ports.Pairs[port], ports.IslandsOf(port));
            yield return new OpenEnd(PlaceOf(a), port, modeOf(port) is ResistanceMode ? Beside(ofA, ofB) : 0);
            yield return new OpenEnd(PlaceOf(b), port, modeOf(port) is ResistanceMode ? Beside(ofB, ofA) : 0);
        }

        ClosedPort Closed(int port)
        {
            var ohms = ports.Ohms(port);
            return new(PlaceOf(ports.Pairs[port].A), port, ohms, modeOf(port) is DiodeTestMode ? UnseenVolts / ohms : ports.UnseenOhms(port) / (ohms * ohms), modeOf(port) switch
            {
                ResistanceMode => LoadReading.Ohms,
                DiodeTestMode => LoadReading.Volts,
                _ => LoadReading.Other,
            });
        }
    }

    /// <summary>True when there is none.</summary>
    public bool IsEmpty => _open.Length == 0 && _closed.Length == 0;

    /// <summary>Sets the bits of those beside which a change leaves other junctions and insulation.</summary>
    public void AddShifted(ChangedPieces changed, ChangedStrays strays, Span<ulong> mask)
    {
        for (var run = 0; run < changed.Runs.Count; run++)
            if (_islands.Of(_bridges.NodeAt(changed.Runs[run].Start)) is var island && !strays.Keeps(island, changed.Runs[run].Piece))
                AddShifted(changed.Runs, run, ShiftOf(run, island, ElementBand.TestCurrentAmperes), ShiftOf(run, island, DiodeTable.Mode.LeastAmperes), mask);

        StrayShift ShiftOf(int run, int island, double amperes) => new(_strays, island, strays.Pieces, _islands.Count + changed.Runs[run].Piece - 1, amperes);
    }

    /// <summary>Sets the bits of those that end on some islands.</summary>
    public void Add(List<int> islands, Span<ulong> mask)
    {
        foreach (var island in islands)
        {
            var (start, end) = (_bridges.NumberOf(_islands.Members(island)[0]), _bridges.EndOf(_islands.Members(island)[0]));
            foreach (var port in _open.AsSpan(_firstOpenAt[start].._firstOpenAt[end]))
                Set(mask, port.Port);
            foreach (var port in _closed.AsSpan(_firstClosedAt[start].._firstClosedAt[end]))
                Set(mask, port.Port);
        }
    }

    private void AddShifted(List<PieceRun> runs, int run, in StrayShift ofOhms, in StrayShift ofVolts, Span<ulong> mask)
    {
        var (start, end, _) = runs[run];
        foreach (ref readonly var open in _open.AsSpan(_firstOpenAt[start].._firstOpenAt[end]))
            if (ofOhms.MovesOpen(open.BesideOhms) && PieceRun.Holding(runs, open.Place) == run)
                Set(mask, open.Port);
        foreach (ref readonly var closed in _closed.AsSpan(_firstClosedAt[start].._firstClosedAt[end]))
            if (Moves(closed, ofOhms, ofVolts) && PieceRun.Holding(runs, closed.Place) == run)
                Set(mask, closed.Port);
    }

    private static bool Moves(in ClosedPort port, in StrayShift ofOhms, in StrayShift ofVolts) => port.Reads switch
    {
        LoadReading.Ohms => ofOhms.Moves(port.Ohms, port.UnseenSiemens),
        LoadReading.Volts => ofVolts.Moves(port.Ohms, port.UnseenSiemens),
        _ => true,
    };

    // Nothing leads between two islands that nothing joins.
    private double Beside(int own, int other) => _strays.AreJoined(own, other) ? _strays.LeastOhms(double.PositiveInfinity, other) : double.PositiveInfinity;

    private static void Set(Span<ulong> mask, int port) => mask[port / 64] |= 1UL << (port % 64);

    // One end of an open port: where it is, and what lies at the other.
    private readonly record struct OpenEnd(int Place, int Port, double BesideOhms);

    // A port with both ends on one island, where its first end is.
    private readonly record struct ClosedPort(int Place, int Port, double Ohms, double UnseenSiemens, LoadReading Reads);

    // What of a port's resistance and what lies beside it is read; other readings may be anything once what lies beside it is otherwise.
    private enum LoadReading
    {
        Ohms,
        Volts,
        Other,
    }
}
