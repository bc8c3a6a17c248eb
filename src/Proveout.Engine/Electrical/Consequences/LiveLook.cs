using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>One state of a faulty machine beside the same of the sound one, for rules to look at.</summary>
internal sealed class LiveLook
{
    private readonly List<LiveFinding> _findings;

    public LiveLook(LiveModel model, LiveSights sights, FaultyMachine machine, LiveSolution sound, LiveSolution faulty, List<LiveFinding> findings)
    {
        (Model, Sights, Machine, Sound, Last, _findings) = (model, sights, machine, sound, faulty, findings);
        First = faulty.AtFirst ?? faulty;
    }

    public LiveModel Model { get; }

    public LiveSights Sights { get; }

    public FaultyMachine Machine { get; }

    public LiveSolution Sound { get; }

    /// <summary>The moment before any device interrupts.</summary>
    public LiveSolution First { get; }

    /// <summary>What stays after the last has interrupted.</summary>
    public LiveSolution Last { get; }

    /// <summary>Seconds from the first moment to the first interruption; infinite when there is none.</summary>
    public double FirstSeconds => Last.Trips.Count > 0 ? Last.Trips[0].Seconds : double.PositiveInfinity;

    /// <summary>Seconds until the last interruption; infinite for what comes and goes.</summary>
    public double AllSeconds => Last.Settled ? Last.Trips.Sum(trip => trip.Seconds) : double.PositiveInfinity;

    /// <summary>Voltage of metal that a person would clearly not feel, by <see cref="FaultyMachine.MetalOf"/>.</summary>
    public Dictionary<int, double> Unfelt { get; } = [];

    public ControlState State => Last.State;

    public void Add(LiveFindingKind kind, Severity severity, string subject, double value, double limit, string unit, string sentence) =>
        _findings.Add(new(kind, severity, subject, value, limit, unit, State, $"With {State.Words}: {sentence}"));

    /// <summary>A figure of three digits.</summary>
    public static string Figure(double value) => value switch
    {
        // Less than this is what arithmetic leaves of nothing.
        > -1e-6 and < 1e-6 => "0",
        _ when Math.Abs(value) >= 100 => value.ToString("F0", CultureInfo.InvariantCulture),
        _ when Math.Abs(value) >= 10 => value.ToString("F1", CultureInfo.InvariantCulture),
        _ => value.ToString("G2", CultureInfo.InvariantCulture),
    };
}
