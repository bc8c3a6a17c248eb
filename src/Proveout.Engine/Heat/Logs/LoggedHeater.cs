namespace Proveout.Engine.Heat;

/// <summary>The heater as designed, in the room and with the noise and target of a log: so its limits are as narrow as the log allows.</summary>
public static class LoggedHeater
{
    // What the first rows show is the room's temperature but for the sensor's own error: class B at 25 °C is 0.4 K (IEC 60751), thermistors of 1 % likewise.
    private const double RoomKelvin = 1;

    // A target further below the design's than this is another one.
    private const double SameTargetKelvin = 2;

    /// <summary>The heater.</summary>
    /// <param name="design">As designed.</param>
    /// <param name="trace">The log.</param>
    /// <param name="warmUp">Its warm-up.</param>
    /// <param name="hold">Where it is held; null when it is not.</param>
    public static HeaterDesign Of(HeaterDesign design, HeaterTrace trace, WarmUpStretch warmUp, HoldStretch? hold)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(trace);
        ArgumentNullException.ThrowIfNull(warmUp);
        return design with
        {
            AmbientCelsius = new(warmUp.FirstCelsius - RoomKelvin, warmUp.FirstCelsius + RoomKelvin),
            NoiseKelvin = Math.Max(design.NoiseKelvin, trace.NoiseKelvin()),
            TargetCelsius = TargetOf(design, trace, hold, warmUp.FirstCelsius),
        };
    }

    private static double TargetOf(HeaterDesign design, HeaterTrace trace, HoldStretch? hold, double room)
    {
        // A heater is expected to hold any temperature between room and the design's own.
        bool IsHalfWay(double celsius) => celsius > room + (0.3 * (design.TargetCelsius - room));
        if (hold is not null && IsHalfWay(hold.Celsius))
            return hold.Celsius;
        var asked = trace.Target?.Mean.Where(double.IsFinite).DefaultIfEmpty(design.TargetCelsius).Max() ?? design.TargetCelsius;
        return IsHalfWay(asked) && Math.Abs(asked - design.TargetCelsius) > SameTargetKelvin ? asked : design.TargetCelsius;
    }
}
