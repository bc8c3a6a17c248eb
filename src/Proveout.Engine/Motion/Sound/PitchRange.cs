namespace Proveout.Engine.Motion;

/// <summary>Where a fundamental is looked for.</summary>
/// <param name="LowestHertz">From here.</param>
/// <param name="HighestHertz">To here.</param>
public sealed record PitchRange(double LowestHertz, double HighestHertz)
{
    /// <summary>What spans of belts on desktop machines sound: 15 to 600 Hz.</summary>
    public static PitchRange Belts { get; } = new(15, 600);
}
