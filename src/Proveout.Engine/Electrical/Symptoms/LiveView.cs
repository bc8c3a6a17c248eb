using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A live solution with what makes it doubtful.</summary>
internal sealed class LiveView
{
    // A device that takes longer may still be in when a person looks.
    private const double SlowSeconds = 5;

    // A residual-current device may trip from half its rated current (IEC 61008-1, from memory); 30 mA where it is not known which, or whether, one is there.
    private const double MayTripShare = 0.5;
    private const double UsualResidualAmperes = 0.03;

    private readonly Lazy<bool> _isLimiting;
    private readonly Lazy<bool> _mayLosePower;
    private readonly Lazy<ConductingIslands> _islands;

    public LiveView(LiveSolution solution)
    {
        Solution = solution;
        _isLimiting = new(() => solution.Supplies.Any(supply => supply.IsLimiting));
        _mayLosePower = new(() => FindMayLosePower(solution));
        _islands = new(() => new ConductingIslands(solution));
        if (solution.AtFirst is { } first && solution.Trips.Any(trip => trip.Seconds > SlowSeconds))
            Before = new LiveView(first);
    }

    /// <summary>The solution.</summary>
    public LiveSolution Solution { get; }

    /// <summary>The moment before a slow device interrupted; null when none did.</summary>
    public LiveView? Before { get; }

    /// <summary>True when a supply holds its limit: a real one may then come and go instead.</summary>
    public bool IsLimiting => _isLimiting.Value;

    /// <summary>True when a residual-current device before the machine may have taken the power away; whether there is one is not always known.</summary>
    public bool MayLosePower => _mayLosePower.Value;

    /// <summary>Direct voltage from one node to another.</summary>
    public double DirectVolts(int a, int b) => Solution.DcVolts(a) - Solution.DcVolts(b);

    /// <summary>Alternating voltage between two nodes, rms.</summary>
    public double AlternatingVolts(int a, int b) => (Solution.AcVolts(a) - Solution.AcVolts(b)).Magnitude;

    /// <summary>True when two nodes are joined by what conducts well enough to drive a meter.</summary>
    public bool AreJoined(int a, int b) => _islands.Value.AreJoined(a, b);

    /// <summary>Everything that may be seen: now, before a slow device interrupted, and without power when that may be gone.</summary>
    /// <param name="now">What is seen of one moment.</param>
    /// <param name="withoutPower">What is seen without power.</param>
    public ReadingInterval Everything(Func<LiveView, ReadingInterval> now, ReadingInterval withoutPower)
    {
        var seen = now(this);
        if (Before is not null)
            seen = seen.Hull(now(Before));
        return MayLosePower ? seen.Hull(withoutPower) : seen;
    }

    private static bool FindMayLosePower(LiveSolution solution)
    {
        if (solution.Changed.Circuit.Mains is not { } mains)
            return false;
        var looked = mains.ResidualAmperes is null ? solution.AtFirst ?? solution : solution;
        return looked.ResidualAmperes >= MayTripShare * (mains.ResidualAmperes ?? UsualResidualAmperes);
    }
}
