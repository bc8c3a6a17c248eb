using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A fan in an opening, by its data sheet.</summary>
/// <param name="Part">Designation of the part.</param>
/// <param name="BlowsOut">True when it draws air out of the bay, false when it blows air in.</param>
/// <param name="MostFlow">Flow without any pressure against it.</param>
/// <param name="MostPressure">Pressure without any flow.</param>
public sealed record BayFan(string Part, bool BlowsOut, VolumeFlow MostFlow, Pressure MostPressure)
{
    /// <summary>Points of its curve between both ends, by rising flow; a straight line when empty.</summary>
    public ValueList<FanPoint> Points { get; init; } = [];

    /// <summary>How many of it stand one behind another.</summary>
    public int InSeries { get; init; } = 1;

    /// <summary>By how much its speed may differ; null when not said.</summary>
    public Ratio? Scatter { get; init; }

    /// <summary>Turns a minute that its speed signal shows; null when it has none.</summary>
    public double? TurnsAMinute { get; init; }
}
