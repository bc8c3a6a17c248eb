namespace Proveout.Engine.Heat;

/// <summary>Type K thermocouple, reference junction at 0 °C (IEC 60584-1, which has the functions of NIST Monograph 175).</summary>
public static class ThermocoupleK
{
    private static readonly double[] Above =
    [
        -0.176004136860e-01, 0.389212049750e-01, 0.185587700320e-04, -0.994575928740e-07, 0.318409457190e-09,
        -0.560728448890e-12, 0.560750590590e-15, -0.320207200030e-18, 0.971511471520e-22, -0.121047212750e-25,
    ];

    private static readonly double[] Below =
    [
        0, 0.394501280250e-01, 0.236223735980e-04, -0.328589067840e-06, -0.499048287770e-08, -0.675090591730e-10,
        -0.574103274280e-12, -0.310888728940e-14, -0.104516093650e-16, -0.198892668780e-19, -0.163226974860e-22,
    ];

    /// <summary>Lowest temperature in °C.</summary>
    public const double LowestCelsius = -200;

    /// <summary>Highest temperature in °C.</summary>
    public const double HighestCelsius = 1372;

    /// <summary>Voltage in millivolts at a temperature.</summary>
    /// <param name="celsius">Temperature in °C, from <see cref="LowestCelsius"/> to <see cref="HighestCelsius"/>.</param>
    public static double MillivoltsAt(double celsius)
    {
        var sum = 0.0;
        foreach (var coefficient in (celsius < 0 ? Below : Above).Reverse())
            sum = (sum * celsius) + coefficient;
        return celsius < 0 ? sum : sum + (0.1185976 * Math.Exp(-0.1183432e-3 * (celsius - 126.9686) * (celsius - 126.9686)));
    }

    /// <summary>Temperature in °C at a voltage, held to the range.</summary>
    /// <remarks>By halving: the function rises over the whole range.</remarks>
    public static double CelsiusAt(double millivolts)
    {
        var (low, high) = (LowestCelsius, HighestCelsius);
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            if (MillivoltsAt(middle) < millivolts)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>What is shown in °C when the cold junction is taken to be at another temperature than it is.</summary>
    public static double ShownWith(double hotCelsius, double coldCelsius, double coldTakenForCelsius) =>
        CelsiusAt(MillivoltsAt(hotCelsius) - MillivoltsAt(coldCelsius) + MillivoltsAt(coldTakenForCelsius));

    /// <summary>Tolerance in K either way of class 2: 2.5 K or 0.75 % (IEC 60584-1 table 12).</summary>
    public static double Class2(double celsius) => Math.Max(2.5, 0.0075 * Math.Abs(celsius));
}
