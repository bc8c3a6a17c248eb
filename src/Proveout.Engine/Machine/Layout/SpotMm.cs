namespace Proveout.Engine.Machine;

/// <summary>A point of a surface, in millimetres from its lower left corner.</summary>
/// <param name="Across">To the right.</param>
/// <param name="Up">Upwards.</param>
public readonly record struct SpotMm(double Across, double Up)
{
    /// <summary>The point of a file.</summary>
    public static SpotMm Of(PlanePoint point) => new(point.Across.Millimeters, point.Up.Millimeters);

    /// <summary>Distance as the crow flies.</summary>
    public double DistanceTo(SpotMm other) => Math.Sqrt(((other.Across - Across) * (other.Across - Across)) + ((other.Up - Up) * (other.Up - Up)));

    /// <summary>Distance along and across, as wires are dressed.</summary>
    public double SquareDistanceTo(SpotMm other) => Math.Abs(other.Across - Across) + Math.Abs(other.Up - Up);

    /// <summary>The point at a share of the way to another.</summary>
    public SpotMm Towards(SpotMm other, double share) => new(Across + ((other.Across - Across) * share), Up + ((other.Up - Up) * share));
}
