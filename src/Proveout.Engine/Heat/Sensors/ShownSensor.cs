namespace Proveout.Engine.Heat;

/// <summary>What a controller shows of a sensor, sound or with a mistake, for every value that its parts may have.</summary>
/// <param name="Fitted">The kind of sensor that is fitted.</param>
/// <param name="Setting">What the controller is told.</param>
/// <param name="Input">The input that is there.</param>
/// <param name="Series">Lowest and highest resistance in series with the sensor, in ohms.</param>
/// <param name="Parallel">Lowest and highest resistance across it, in ohms; infinite when none.</param>
internal sealed record ShownSensor(SensorType Fitted, SensorSetting Setting, SensorInput Input, (double Low, double High) Series, (double Low, double High) Parallel)
{
    // Temperatures are taken in pieces this wide, so that what is shown at one end and true at the other lies hardly farther apart than both.
    private const double PieceKelvin = 0.25;

    /// <summary>Nothing across the sensor.</summary>
    public static (double Low, double High) NoLeak { get; } = (double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>The channel as designed.</summary>
    public static ShownSensor Sound(SensorChannel channel) => new(channel.Type, channel.Setting, channel.Input, (0, channel.CableOhms), NoLeak);

    /// <summary>Lowest and highest resistance in ohms at the plug, with the sensor between two temperatures in °C.</summary>
    public (double Low, double High) Ohms(double from, double to) => Extremes(Sensors().SelectMany(sensor => new[] { sensor.OhmsAt(from), sensor.OhmsAt(to) }));

    /// <summary>Lowest and highest temperature in °C that may be shown, with the sensor between two temperatures in °C.</summary>
    /// <remarks>What is shown moves one way only with each quantity, so that its limits lie where each is at an end of its own.</remarks>
    public (double Low, double High) Shown(double from, double to) => Extremes(
        from sensor in Sensors()
        from pullUp in PullUps()
        from celsius in new[] { @from, to }
        select Setting.ShownAt(sensor.OhmsAt(celsius), pullUp));

    /// <summary>Lowest and highest of what is shown less what is true, in K, with the sensor anywhere between two temperatures in °C.</summary>
    public (double Low, double High) Error(double from, double to)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling((to - from) / PieceKelvin));
        var (lowest, highest) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var piece = 0; piece < pieces; piece++)
        {
            var start = from + ((to - from) * piece / pieces);
            var end = from + ((to - from) * (piece + 1) / pieces);
            var (low, high) = Shown(start, end);
            (lowest, highest) = (Math.Min(lowest, low - end), Math.Max(highest, high - start));
        }

        return (lowest, highest);
    }

    /// <summary>Hottest that the sensor may be in °C once heating from a temperature makes the controller show another; null when it may never show it.</summary>
    /// <remarks>A sensor whose resistance moves the wrong way is led away from what is wanted by heating: what is shown colder than at the start does not count.</remarks>
    public double? HottestWhileShown(double celsius, double from)
    {
        // Where more is shown already at the start, the heater stays off.
        var hottest = from;
        foreach (var sensor in Sensors())
            foreach (var pullUp in PullUps())
                if (sensor.CelsiusAt(Setting.OhmsShownAs(celsius, pullUp)) is { } real && real >= from)
                    hottest = Math.Max(hottest, real);
                else if (!(Setting.ShownAt(sensor.OhmsAt(from), pullUp) >= celsius))
                    return null;
        return hottest;
    }

    private IEnumerable<FittedSensor> Sensors() =>
        from curve in Fitted.Corners
        from series in new[] { Series.Low, Series.High }
        from parallel in new[] { Parallel.Low, Parallel.High }
        select new FittedSensor(curve, series, parallel);

    private IEnumerable<double> PullUps() => [Input.PullUpOhms * (1 - Input.PullUpShare), Input.PullUpOhms * (1 + Input.PullUpShare)];

    private static (double Low, double High) Extremes(IEnumerable<double> values)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values)
            (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return (low, high);
    }
}
