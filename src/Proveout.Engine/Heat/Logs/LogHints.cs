namespace Proveout.Engine.Heat;

/// <summary>What a person says of a log that its headings leave open.</summary>
/// <param name="Sensor">Heading of the temperature that is meant; null when there is one only, or its name tells.</param>
/// <param name="Output">Heading of the output that heats it; null likewise.</param>
/// <param name="FullOutput">What the log calls full output, such as 1, 100, 255, or the watts; null when its heading or its values tell.</param>
/// <param name="Watts">Power of the heater, for an output in watts; null when it is not known.</param>
/// <param name="FromSeconds">Rows before this time from the log's first row are left out.</param>
/// <param name="ToSeconds">Rows after this time are left out.</param>
public sealed record LogHints(string? Sensor = null, string? Output = null, double? FullOutput = null, double? Watts = null, double FromSeconds = 0, double ToSeconds = double.PositiveInfinity)
{
    /// <summary>Lines before this one are left out.</summary>
    public int FromLine { get; init; }

    /// <summary>Lines after this one are left out.</summary>
    public int ToLine { get; init; } = int.MaxValue;

    /// <summary>Nothing is said.</summary>
    public static LogHints None { get; } = new();
}
