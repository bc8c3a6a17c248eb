using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Potentials and currents of a machine in one live state. Nodes and elements are those of the wiring network.</summary>
public sealed class LiveSolution
{
    internal LiveSolution(ChangedCircuit changed, ControlState state, LivePoint point, IReadOnlyList<Trip> trips, bool settled, LiveSolution? atFirst)
    {
        (Changed, State, Point, Trips, Settled, AtFirst) = (changed, state, point, trips, settled, atFirst);
    }

    /// <summary>The state of the controls.</summary>
    public ControlState State { get; }

    /// <summary>Protective devices that interrupted, in order; the potentials are those after the last.</summary>
    public IReadOnlyList<Trip> Trips { get; }

    /// <summary>False when no state was found that agrees with itself (a relay that chatters, a supply that comes and goes): the figures are then those of the last try.</summary>
    public bool Settled { get; }

    /// <summary>The moment before the first device interrupted, or the worst of what comes and goes; null when neither is the case.</summary>
    public LiveSolution? AtFirst { get; }

    /// <summary>Current in amperes that does not return through the outlet's neutral: what a residual-current device there sees.</summary>
    public double ResidualAmperes =>
        Changed.Circuit.Outlet.Aggregate(Complex.Zero, (sum, branch) => sum + AcAmperes(branch.Index)).Magnitude;

    /// <summary>Every source of direct voltage.</summary>
    public IEnumerable<SupplyPoint> Supplies =>
        from branch in Changed.Circuit.Supplies
        select new SupplyPoint(
            branch.Subject,
            branch.Name,
            Point.Alive[branch.Index],
            Point.Mode[branch.Index] == LivePoint.Limiting,
            DcVolts(branch.A) - DcVolts(branch.B),
            -DcAmperes(branch.Index));

    /// <summary>Controls that coils have moved.</summary>
    public IEnumerable<(string Part, string Control, string Position)> Moved =>
        from drive in Changed.Circuit.Drives
        where Point.Positions[drive.Control] == drive.Position
        let control = Changed.Circuit.Controls[drive.Control]
        select (control.Part, control.Name, control.Positions[drive.Position]);

    internal ChangedCircuit Changed { get; }

    internal LivePoint Point { get; }

    /// <summary>Direct potential of a node against earth, in volts.</summary>
    public double DcVolts(int node) => LiveBalance.Dc(Point, node);

    /// <summary>Alternating potential of a node against earth, in volts rms.</summary>
    public Complex AcVolts(int node) => LiveBalance.Ac(Point, node);

    /// <summary>Direct current through an element from its first node to its second, in amperes.</summary>
    public double DcAmperes(int element) => LiveBalance.DcAmperes(Changed.Circuit.Branches[element], Changed.Siemens[element], Point);

    /// <summary>Alternating current through an element from its first node to its second, in amperes rms.</summary>
    public Complex AcAmperes(int element) =>
        LiveBalance.AcAmperes(Changed.Circuit.Branches[element], Changed.Siemens[element], Point, Changed.Circuit.RadiansPerSecond);

    /// <summary>Direct and alternating current through an element taken together, in amperes: what heats it.</summary>
    public double HeatingAmperes(int element)
    {
        var (direct, alternating) = (DcAmperes(element), AcAmperes(element));
        return Math.Sqrt((direct * direct) + (alternating.Real * alternating.Real) + (alternating.Imaginary * alternating.Imaginary));
    }

    /// <summary>True when a contact or switch conducts, or another element is there.</summary>
    public bool Conducts(int element) =>
        Changed.Siemens[element] > 0 && LiveBalance.Conducts(Changed.Circuit.Branches[element], Point);
}
