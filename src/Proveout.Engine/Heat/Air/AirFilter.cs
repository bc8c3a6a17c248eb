namespace Proveout.Engine.Heat;

/// <summary>A filter: between a law straight in the flow, as of felt, and one with its square, as of mesh.</summary>
/// <param name="Flow">Flow in m³/s at which its pressures are known.</param>
/// <param name="Pascals">What it takes there as it is when the bay is tried: new, unless it is clogged by mistake.</param>
/// <param name="LoadedPascals">What it takes there when it is to be changed.</param>
public sealed record AirFilter(double Flow, Between Pascals, double LoadedPascals)
{
    /// <summary>The same filter at any time between now and when it is to be changed.</summary>
    public AirFilter InUse => this with { Pascals = new(Pascals.Low, Math.Max(Pascals.High, LoadedPascals)) };

    /// <summary>Least pressure that it takes at a flow of zero or above.</summary>
    public double LeastPascalsAt(double flow) => Pascals.Low * Math.Min(flow / Flow, flow * flow / (Flow * Flow));

    /// <summary>Most pressure that it takes at a flow of zero or above.</summary>
    public double MostPascalsAt(double flow) => Pascals.High * Math.Max(flow / Flow, flow * flow / (Flow * Flow));
}
