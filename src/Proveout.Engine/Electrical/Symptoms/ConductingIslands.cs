using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which nodes of a live solution are joined well enough that a meter between them reads what the circuit gives.</summary>
internal sealed class ConductingIslands
{
    // Half a megohm before the ten megohms of a meter alters a reading by a twentieth, which the bands cover.
    private const double LeastSiemens = 2e-6;

    private readonly DisjointSets _joined = new();
    private readonly int _earth;

    public ConductingIslands(LiveSolution solution)
    {
        var (changed, point) = (solution.Changed, solution.Point);
        _earth = changed.Circuit.NodeCount;
        _joined.Reset(_earth + 1);
        foreach (var branch in changed.Circuit.Branches)
            if (Conducts(branch, changed.Siemens[branch.Index], point))
                Join(branch.A, branch.B);
        foreach (var (a, b, siemens) in changed.Joins)
            if (siemens >= LeastSiemens)
                Join(a, b);
    }

    /// <summary>True when both belong to one island.</summary>
    public bool AreJoined(int a, int b) => _joined.RootOf(PlaceOf(a)) == _joined.RootOf(PlaceOf(b));

    private static bool Conducts(LiveBranch branch, double siemens, LivePoint point) => branch.Kind switch
    {
        LiveBranchKind.Path or LiveBranchKind.Contact or LiveBranchKind.Switch => siemens >= LeastSiemens && LiveBalance.Conducts(branch, point),
        LiveBranchKind.Mains => true,
        LiveBranchKind.Junction or LiveBranchKind.Supply or LiveBranchKind.Held => point.Mode[branch.Index] != LivePoint.Off,
        LiveBranchKind.Input => point.InputSiemens[branch.Index] >= LeastSiemens,
        _ => false,
    };

    private void Join(int a, int b) => _joined.Join(PlaceOf(a), PlaceOf(b));

    private int PlaceOf(int node) => node < 0 ? _earth : node;
}
