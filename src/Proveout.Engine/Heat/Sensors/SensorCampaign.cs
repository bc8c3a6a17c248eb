using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What every mistake with a temperature sensor shows at every check of it, in the form that plan and diagnosis work on.</summary>
public static class SensorCampaign
{
    private static readonly SetUp Loose = new(
        "sensor-unplugged",
        "Sensor unplugged, machine cold",
        ["Let the machine stand off for some hours.", "Pull the sensor's plug at the controller."],
        ["Isolate, lock off and prove dead first."],
        120);

    private static readonly SetUp Cold = new(
        "controller-on-heaters-off",
        "Controller on, heaters off, machine cold",
        ["Plug the sensor in.", "Switch on with the heater's plug pulled or its fuse out."],
        ["Power is on: stay clear of the mains side, where there is one.", "No heater may be plugged in: a wrong sensor would let it run without end."],
        180)
    {
        Phase = Phase.Live,
    };

    private static readonly SetUp Warm = Cold with
    {
        Id = "sensor-warmed",
        Title = "Sensor and a thermometer warmed together, heaters off",
        Instructions = ["Leave the heater unplugged.", "Bind the sensor and a contact thermometer together, in a water-tight sleeve, and hold both in hot water until neither moves."],
        Cautions = [.. Cold.Cautions, "Hot water scalds, and water does not belong near the mains side: do this on a table beside the machine.", "A sensor that sits in a mains mat stays dry: warm it with air, beside a contact thermometer."],
        CostSeconds = 600,
    };

    /// <summary>Simulates every mistake at every check, for every value that sound parts may have.</summary>
    /// <param name="channel">The channel as designed.</param>
    public static FaultDictionary Of(SensorChannel channel)
    {
        ArgumentNullException.ThrowIfNull(channel);
        var sound = ShownSensor.Sound(channel);
        SensorCheck[] made = [.. SensorCheck.All];
        Check[] checks = [.. made.Select(check => check.Of(sound))];
        SensorMistake[] mistakes = [.. SensorMistakes.Of(channel)];
        return new FaultDictionary(
            [Loose, Cold, Warm],
            checks,
            [.. mistakes.Select(mistake => FaultOf(mistake, channel.WorkingCelsius))],
            [.. mistakes.Select(mistake => ResponseOf(mistake.Left, made, checks))]);
    }

    private static Fault FaultOf(SensorMistake mistake, double workingCelsius)
    {
        var (severity, consequence) = mistake.ConsequenceAt(workingCelsius);
        return new Fault(mistake.Id, mistake.Kind, mistake.Sentence, [], severity, consequence, mistake.Prior, mistake.OtherEvidence);
    }

    private static FaultResponse ResponseOf(ShownSensor left, SensorCheck[] made, Check[] checks)
    {
        var changed = made.Index()
            .Select(check => (check.Index, Interval: check.Item.Shown(left)))
            .Where(shown => shown.Interval != checks[shown.Index].Expectation)
            .ToArray();
        return new FaultResponse([.. changed.Select(shown => shown.Index)], [.. changed.Select(shown => shown.Interval)]);
    }
}
