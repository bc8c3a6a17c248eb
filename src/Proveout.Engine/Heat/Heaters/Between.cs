namespace Proveout.Engine.Heat;

/// <summary>A quantity that lies between two values.</summary>
/// <param name="Low">Lowest value.</param>
/// <param name="High">Highest value.</param>
public readonly record struct Between(double Low, double High)
{
    /// <summary>A value and a share of it either way.</summary>
    public static Between Around(double value, double share) => new(value * (1 - share), value * (1 + share));

    /// <summary>Both ends times a factor above zero.</summary>
    public Between Times(double factor) => new(Low * factor, High * factor);

    /// <summary>Both ends times those of another, all above zero.</summary>
    public Between Times(Between other) => new(Low * other.Low, High * other.High);

    /// <summary>The value a share of the way from low to high.</summary>
    public double At(double share) => Low + (share * (High - Low));
}
