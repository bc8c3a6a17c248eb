using System.Globalization;
using System.Text;
using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Logs made from the engine's own model, with seeded noise.</summary>
internal static class SimulatedLog
{
    public static readonly HeaterDesign Plate = new(
        "plate", Between.Around(500, 0.1), Between.Around(HeaterDesign.OfAluminiumPlate(0.3, 0.3, 0.006), 0.05), new PlateLoss(0.3, 0.3, 0.006, 0.8, 2), new(0.8, 1.25), new(6, 15), new(18, 26), 100);

    public static readonly HeaterDesign Nozzle = new(
        "nozzle", Between.Around(60, 0.12), Between.Around(28, 0.15), new LumpedLoss(0.09), new(0.8, 1.25), new(3, 7), new(18, 26), 220);

    /// <summary>One standard normal number.</summary>
    public static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>A heater drawn evenly from its tolerances.</summary>
    public static HeaterTrial Draw(HeaterDesign design, Random random) => design.At([.. Enumerable.Range(0, 6).Select(_ => random.NextDouble())]);

    /// <summary>Off, full output until the target is nearly shown, then what holds it; the log's columns are time, plate, other, output, target.</summary>
    public static string WarmUpText(HeaterTrial heater, double target, Random random, double offSeconds, double forSeconds, bool heatsWhenOff = false, bool isExchanged = false, double stepSeconds = 1)
    {
        double Output(double time) => time < offSeconds ? (heatsWhenOff ? 1 : 0) : 1;
        var curve = HeatCurve.Of(heater, Output, heater.AmbientCelsius, forSeconds, stepSeconds / 4);
        // The shown temperature of a block with a slow sensor runs on by its lag: it is throttled when the body is where the target will be shown.
        var real = heater.AmbientCelsius + ((target - heater.AmbientCelsius) / heater.SeenShare);
        var reached = curve.Real.Index().Where(item => item.Item >= real).Select(item => item.Index * curve.StepSeconds).FirstOrDefault(double.PositiveInfinity);
        if (isExchanged)
            reached = double.PositiveInfinity;
        var hold = Math.Min(1, heater.HoldShare(target));
        curve = HeatCurve.Of(heater, time => time < reached ? Output(time) : hold, heater.AmbientCelsius, forSeconds, stepSeconds / 4);
        var text = new StringBuilder("time [s],plate temperature [degC],other temperature [degC],plate output [0-1],plate target [degC]\n");
        for (var time = 0.0; time <= forSeconds; time += stepSeconds)
        {
            var own = curve.ShownAt(time) + (0.1 * Normal(random));
            var other = heater.AmbientCelsius + (0.1 * Normal(random));
            var told = time < offSeconds ? 0 : time < reached ? 1 : hold;
            text.Append(CultureInfo.InvariantCulture, $"{time:0.###},{(isExchanged ? other : own):0.00},{(isExchanged ? own : other):0.00},{told:0.0000},{(time < offSeconds ? 0 : target):0}\n");
        }

        return text.ToString();
    }

    /// <summary>A log, read.</summary>
    public static HeatLog Read(string text, LogHints? hints = null)
    {
        var read = HeatLogReader.Read(new StringReader(text), "log.csv", hints ?? LogHints.None);
        Assert.Empty(read.Diagnostics);
        return read.Value!;
    }

    /// <summary>The heater whose heading says plate.</summary>
    public static HeaterTrace Trace(string text, string? body = "plate") => Trace(Read(text), body);

    /// <summary>The heater in the run that lasts longest.</summary>
    public static HeaterTrace Trace(HeatLog log, string? body = "plate")
    {
        var trace = HeaterTrace.Of(log, log.LongestRun, LogHints.None, body);
        Assert.Empty(trace.Diagnostics);
        return trace.Value!;
    }

    /// <summary>A step of the output from 0 by a share at 60 s, as a table of time, temperature and output.</summary>
    public static string StepText(ProcessModel model, double share, double forSeconds, double stepSeconds, Func<double> noise)
    {
        var text = new StringBuilder("time [s];temperature [degC];output [%]\n");
        for (var time = 0.0; time <= forSeconds; time += stepSeconds)
            text.Append(CultureInfo.InvariantCulture, $"{time:0.###};{22 + (share * model.StepAt(time - 60)) + noise():0.0000};{(time < 60 ? 0 : 100 * share):0.##}\n");
        return text.ToString();
    }

    /// <summary>What a text is refused for.</summary>
    public static Diagnostic Refusal(string text, LogHints? hints = null) =>
        Assert.Single(HeatLogReader.Read(new StringReader(text), "log.csv", hints ?? LogHints.None).Diagnostics);
}
