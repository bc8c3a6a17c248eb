using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>A solver of a circuit, in which what no mode moves is placed: all of it for new mistakes, and for the same ones only what something opens, closes or interrupts. One thread's own.</summary>
internal sealed class PlacedPaths<T>(LiveCircuit circuit)
    where T : struct, INumberBase<T>
{
    private ChangedCircuit? _placed;

    /// <summary>The solver.</summary>
    public SparseSolver<T> Solver { get; } = new(circuit.Pattern, T.CreateChecked(LiveCircuit.LeakSiemens));

    /// <summary>Places the paths and contacts of a circuit as they stand at a point.</summary>
    public void Place(ChangedCircuit changed, LivePoint point)
    {
        Solver.Join(changed.Joins);
        var paths = ReferenceEquals(changed, _placed) ? circuit.MovingPaths : circuit.Paths;
        _placed = changed;
        foreach (var path in paths)
            Solver.Set(path, point.Tripped[path] || (circuit.Moves[path] && !point.Closed[path]) ? T.Zero : T.CreateChecked(changed.Siemens[path]));
    }
}
