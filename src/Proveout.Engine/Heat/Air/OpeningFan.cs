namespace Proveout.Engine.Heat;

/// <summary>A fan in an opening.</summary>
/// <param name="Curve">Its curve.</param>
/// <param name="BlowsOut">True when it draws air out of the bay.</param>
/// <param name="Speed">Its speed over that of its curve.</param>
public sealed record OpeningFan(FanCurve Curve, bool BlowsOut, Between Speed)
{
    /// <summary>Designation of the part; empty when not said.</summary>
    public string Part { get; init; } = "";

    /// <summary>True when it stands still, and is only in the way.</summary>
    public bool Stands { get; init; }

    /// <summary>Current in A that its type says; null when not known.</summary>
    public double? Amperes { get; init; }

    /// <summary>What is drawn of that current: data sheets give the most, and a fan takes some nine tenths of it; common practice.</summary>
    public Between CurrentShare { get; init; } = new(0.6, 1.15);

    /// <summary>Turns a minute at the speed of its curve; null when it has no speed signal.</summary>
    public double? TurnsAMinute { get; init; }
}
