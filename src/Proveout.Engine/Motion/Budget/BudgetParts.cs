namespace Proveout.Engine.Motion;

/// <summary>What is known of a machine with a beam (x) on two rails (y) over a plate; what is 0 counts as nothing.</summary>
/// <param name="TravelXMillimetres">Travel of x.</param>
/// <param name="TravelYMillimetres">Travel of y.</param>
public sealed record BudgetParts(double TravelXMillimetres, double TravelYMillimetres)
{
    /// <summary>Angle by which the beam is not square to the rails, in rad.</summary>
    public double Square { get; init; }

    /// <summary>Width of the zone that holds the beam's guide, seen from above, in mm.</summary>
    public double BeamSideways { get; init; }

    /// <summary>The same seen from the front.</summary>
    public double BeamUpright { get; init; }

    /// <summary>Width of the zone that holds a rail of y, seen from above, in mm.</summary>
    public double RailSideways { get; init; }

    /// <summary>The same seen from the side.</summary>
    public double RailUpright { get; init; }

    /// <summary>Rise of one rail against the other over the travel of y, in mm.</summary>
    public double RailsRise { get; init; }

    /// <summary>Backlash of x, in mm.</summary>
    public double BacklashX { get; init; }

    /// <summary>Backlash of y, in mm.</summary>
    public double BacklashY { get; init; }

    /// <summary>The belt of x, and the least run to its motor in m; null when its give is not known.</summary>
    public (BeltDrivenMass Belt, double ShortestRun)? BeltX { get; init; }

    /// <summary>The belt of y.</summary>
    public (BeltDrivenMass Belt, double ShortestRun)? BeltY { get; init; }

    /// <summary>Friction that a belt pulls against, in N.</summary>
    public double Friction { get; init; }

    /// <summary>Highest less lowest point of the plate after levelling, in mm.</summary>
    public double PlateResidual { get; init; }

    /// <summary>Most that a probed height is off, in mm.</summary>
    public double ProbeError { get; init; }

    /// <summary>How far the height between nozzle and plate drifts after it was probed, in mm.</summary>
    public double HeightDrift { get; init; }

    /// <summary>Growth of the frame by heat, for each mm: coefficient times warming.</summary>
    public double Growth { get; init; }
}
