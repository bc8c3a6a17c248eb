using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Currents of a live circuit from its potentials.</summary>
internal static class LiveBalance
{
    /// <summary>True when a path, contact or switch conducts.</summary>
    public static bool Conducts(LiveBranch branch, LivePoint point) => !point.Tripped[branch.Index] && branch.Kind switch
    {
        LiveBranchKind.Contact or LiveBranchKind.Switch => point.Closed[branch.Index],
        _ => true,
    };

    /// <summary>Direct current through a branch from its first node to its second.</summary>
    public static double DcAmperes(LiveBranch branch, double siemens, LivePoint point)
    {
        var across = Dc(point, branch.A) - Dc(point, branch.B);
        return branch.Kind switch
        {
            LiveBranchKind.Path or LiveBranchKind.Contact or LiveBranchKind.Switch or LiveBranchKind.Mains =>
                Conducts(branch, point) ? across * siemens : 0,
            LiveBranchKind.Input => across * point.InputSiemens[branch.Index],
            LiveBranchKind.Junction => point.Mode[branch.Index] == LivePoint.On ? (across - branch.Volts) * siemens : 0,
            LiveBranchKind.Supply or LiveBranchKind.Held => point.Mode[branch.Index] switch
            {
                LivePoint.On => (across - SetVolts(branch, point)) * siemens,
                LivePoint.Limiting => -branch.LimitAmperes,
                _ => 0,
            },
            _ => 0,
        };
    }

    /// <summary>Alternating current through a branch from its first node to its second.</summary>
    public static Complex AcAmperes(LiveBranch branch, double siemens, LivePoint point, double radiansPerSecond)
    {
        if (point.AcVolts.Length == 0)
            return Complex.Zero;
        var across = Ac(point, branch.A) - Ac(point, branch.B);
        return branch.Kind == LiveBranchKind.Mains
            ? (across - branch.Volts) * AcAdmittance(branch, siemens, point, radiansPerSecond)
            : across * AcAdmittance(branch, siemens, point, radiansPerSecond);
    }

    /// <summary>Admittance of a branch at the mains frequency; a source of direct voltage is open, the capacitors beside it are not.</summary>
    public static Complex AcAdmittance(LiveBranch branch, double siemens, LivePoint point, double radiansPerSecond) => branch.Kind switch
    {
        LiveBranchKind.Path or LiveBranchKind.Contact or LiveBranchKind.Switch => Conducts(branch, point) ? siemens : 0,
        LiveBranchKind.Mains => branch.Admittance ?? siemens,
        LiveBranchKind.Input => point.InputSiemens[branch.Index],
        LiveBranchKind.Capacitor => new Complex(0, radiansPerSecond * branch.Farads),
        LiveBranchKind.Junction => point.AcClosed[branch.Index] ? siemens : 0,
        _ => 0,
    };

    /// <summary>The voltage that a source holds: its own, or that of its feed when the potentials were computed.</summary>
    public static double SetVolts(LiveBranch branch, LivePoint point) =>
        branch.Kind == LiveBranchKind.Held ? point.HeldVolts[branch.Index] : branch.Volts;

    /// <summary>Voltage of the feed of an output that holds a current.</summary>
    public static double FeedVolts(LiveBranch branch, LivePoint point) =>
        branch.Port is { } feed ? Math.Max(0, Dc(point, feed.A) - Dc(point, feed.B)) : 0;

    public static double Dc(LivePoint point, int node) => node < 0 ? 0 : point.DcVolts[node];

    public static Complex Ac(LivePoint point, int node) => node < 0 || point.AcVolts.Length == 0 ? Complex.Zero : point.AcVolts[node];
}
