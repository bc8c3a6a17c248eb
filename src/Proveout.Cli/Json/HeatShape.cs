using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What everything that a machine heats will do.</summary>
internal sealed record HeatShape(string Format, string Machine, IReadOnlyList<HeatedShape> Bodies)
{
    public static HeatShape Of(HeatView view) => new("proveout-heat 1", view.Machine.Name, [.. view.Bodies.Select(HeatedShape.Of)]);
}

/// <summary>One heated body.</summary>
internal sealed record HeatedShape(
    string Name,
    string Heater,
    double TargetCelsius,
    double? WattsPerSquareCentimetre,
    LimitsShape SecondsToTarget,
    LimitsShape HoldPercent,
    IReadOnlyList<CurvePointShape> Curve,
    GuardView? Guard,
    ControllerView? Controller,
    string Sensor,
    IReadOnlyList<SensorPoint> SensorTable,
    MistakeTableShape SensorMistakes,
    MistakeTableShape WarmUpMistakes)
{
    public static HeatedShape Of(HeatedView view) => new(
        view.Name,
        view.Heater,
        view.TargetCelsius,
        view.WattsPerSquareCentimetre,
        LimitsShape.Of(view.Seconds.Least, view.Seconds.Most),
        LimitsShape.Of(view.HoldPercent.Least, view.HoldPercent.Most),
        [.. view.Curve.Select(point => new CurvePointShape(point.Seconds, point.Least, point.Most))],
        view.Guard,
        view.Controller,
        view.SensorName,
        view.SensorTable,
        MistakeTableShape.Of(view.Sensor),
        MistakeTableShape.Of(view.WarmUp));
}

/// <summary>A lower and an upper limit; null stands for none.</summary>
internal sealed record LimitsShape(double? Low, double? High)
{
    public static LimitsShape Of(double low, double high) => new(IntervalShape.ValueOf(low), IntervalShape.ValueOf(high));
}

/// <summary>A point of the good curve.</summary>
internal sealed record CurvePointShape(double Seconds, double LeastCelsius, double MostCelsius);

/// <summary>Checks and mistakes.</summary>
internal sealed record MistakeTableShape(IReadOnlyList<SetUpShape> SetUps, IReadOnlyList<HeatCheckShape> Checks, IReadOnlyList<HeatMistakeShape> Mistakes)
{
    public static MistakeTableShape Of(MistakeTable table) => new(
        [.. table.SetUps.Select(SetUpShape.Of)],
        [.. table.Checks.Select(check => new HeatCheckShape(
            check.Check.Id, check.Check.SetUp, check.Check.Title, check.Check.Instruction, check.Check.Unit,
            LimitsShape.Of(check.Check.Expectation.Low, check.Check.Expectation.High), check.Expected))],
        [.. table.Mistakes.Select(row => new HeatMistakeShape(
            row.Fault.Id, row.Fault.Kind, row.Fault.Sentence, SeverityWords.Of(row.Fault.Severity), row.Fault.Consequence, row.Fault.OtherEvidence, row.CaughtBy))]);
}

/// <summary>A check of a sensor or a warm-up.</summary>
internal sealed record HeatCheckShape(string Id, string SetUp, string Title, string Instruction, string Unit, LimitsShape Expected, string ExpectedWords);

/// <summary>A mistake with a sensor or a heater.</summary>
internal sealed record HeatMistakeShape(
    string Id, string Kind, string Sentence, string Severity, string Consequence, string OtherEvidence, IReadOnlyList<string> CaughtBy);
