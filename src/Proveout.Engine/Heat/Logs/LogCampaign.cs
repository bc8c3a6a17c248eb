using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What every mistake with a heater shows in a log: the readings of the first warm-up, and the rise at the end of full output, which every log has.</summary>
public static class LogCampaign
{
    /// <summary>Identifier of the reading that is added.</summary>
    public const string LateRise = "rise-at-end-of-full-output";

    private const double NoiseDeviations = 4;

    /// <summary>The dictionary.</summary>
    /// <param name="design">The heater in the room of the log (<see cref="LoggedHeater"/>).</param>
    /// <param name="fullSeconds">For how long the log shows full output from cold; the reading is left out below 1 s.</param>
    public static FaultDictionary Of(HeaterDesign design, double fullSeconds)
    {
        ArgumentNullException.ThrowIfNull(design);
        var dictionary = HeaterCampaign.Of(design);
        if (fullSeconds < 1)
            return dictionary;
        var setUp = dictionary.SetUps[^1] with { Id = "log-of-full-output" };
        var check = new Check(
            LateRise, "temperature-rise", setUp.Id, string.Create(CultureInfo.InvariantCulture, $"Rise after {fullSeconds:0} s at full output"),
            "Take by how much the temperature shown has risen when the output is first throttled, or the log ends.", [], "K", RiseOf(design, fullSeconds, design.NoiseKelvin),
            "Power, heat capacity, loss and sensor of the design, each with its tolerance.", fullSeconds);
        return dictionary.Extended([setUp], [check], [.. HeaterMistakes.Of(design).Select(mistake => new FaultResponse([0], [Shown(mistake, fullSeconds, design.NoiseKelvin)]))]);
    }

    /// <summary>Readings further than noise apart from the limits are judged; by so much these are widened.</summary>
    public static double Widening(HeaterDesign design) => NoiseDeviations * (design ?? throw new ArgumentNullException(nameof(design))).NoiseKelvin;

    // What another body's sensor shows in the end nobody knows; that it does not cool is all.
    private static ReadingInterval Shown(HeaterMistake mistake, double fullSeconds, double noise) =>
        mistake.IsSeenElsewhere ? new(-2, ReadingInterval.OverRange) : RiseOf(mistake.Left, fullSeconds, noise);

    private static ReadingInterval RiseOf(HeaterDesign left, double fullSeconds, double noise)
    {
        double Rise(HeaterTrial trial) => HeatCurve.Of(trial, _ => 1, trial.AmbientCelsius, fullSeconds, fullSeconds / 2000) is var curve ? curve.Shown[^1] - curve.Shown[0] : 0;
        return new(Rise(left.Coldest) - (NoiseDeviations * noise), Rise(left.Warmest) + (NoiseDeviations * noise));
    }
}
