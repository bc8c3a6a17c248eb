using System.Globalization;

namespace Proveout.Engine.Heat;

/// <summary>Every plausible mistake with a temperature sensor, by a rule a kind.</summary>
internal static class SensorMistakes
{
    // Pull-ups that inputs are met with, common practice.
    private static readonly double[] PullUps = [1000, 2200, 4700, 10_000];

    public static IEnumerable<SensorMistake> Of(SensorChannel channel) =>
        [.. OtherTypes(channel), .. OtherSettings(channel), .. OtherPullUps(channel), .. Joints(channel)];

    private static IEnumerable<SensorMistake> OtherTypes(SensorChannel channel) =>
        from type in Others(channel)
        select new SensorMistake(
            $"sensor-of-another-type:{type.Id}",
            "sensor-of-another-type",
            $"A {type.Name} is fitted in place of a {channel.Type.Name}.",
            0.01,
            "the print on the bag or bead, if there is one",
            ShownSensor.Sound(channel) with { Fitted = type });

    private static IEnumerable<SensorMistake> OtherSettings(SensorChannel channel) =>
        from type in Others(channel)
        select new SensorMistake(
            $"curve-set-wrong:{type.Id}",
            "curve-set-wrong",
            $"The controller is set to a {type.Name}; a {channel.Type.Name} is fitted.",
            0.02,
            "the controller's settings",
            ShownSensor.Sound(channel) with { Setting = channel.Setting with { Curve = type.Curve } });

    private static IEnumerable<SensorMistake> OtherPullUps(SensorChannel channel) =>
        from ohms in PullUps
        where Math.Abs(ohms - channel.Input.PullUpOhms) > 0.05 * channel.Input.PullUpOhms
        select new SensorMistake(
            string.Create(CultureInfo.InvariantCulture, $"pull-up-set-wrong:{ohms:0}"),
            "pull-up-set-wrong",
            string.Create(CultureInfo.InvariantCulture, $"The controller reckons with a pull-up of {ohms / 1000:0.#} kΩ; {channel.Input.PullUpOhms / 1000:0.#} kΩ are fitted."),
            0.01,
            "the controller's settings and the board's sheet",
            ShownSensor.Sound(channel) with { Setting = channel.Setting with { PullUpOhms = ohms } });

    private static IEnumerable<SensorMistake> Joints(SensorChannel channel)
    {
        var sound = ShownSensor.Sound(channel);
        yield return new(
            "sensor-open", "sensor-open", "The sensor's circuit is open: a broken wire, a plug half in, a crimp on insulation.", 0.03, "tug at both plugs",
            sound with { Series = (10e6, double.PositiveInfinity) });
        yield return new(
            "sensor-short", "sensor-short", "The sensor's two wires touch, or its bead is crushed.", 0.01, "look at the bead and its sleeves",
            sound with { Parallel = (0.05, 20) });
        yield return new(
            "poor-joint", "poor-joint", "A crimp or plug of the sensor has 20 Ω to 200 Ω.", 0.02, "wiggle the plug while watching the reading",
            sound with { Series = (20, 200) });
        yield return new(
            "leak", "leak", "Flux, damp or a finger joins the sensor's two contacts with 50 kΩ to 200 kΩ.", 0.01, "clean the plug and read again",
            sound with { Parallel = (50e3, 200e3) });
    }

    private static IEnumerable<SensorType> Others(SensorChannel channel) => SensorTypes.All.Where(type => type.Id != channel.Type.Id);
}
