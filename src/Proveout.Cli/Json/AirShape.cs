using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>The air in every bay of a machine.</summary>
internal sealed record AirShape(string Format, string Machine, IReadOnlyList<BayShape> Bays)
{
    public static AirShape Of(AirView view) => new("proveout-air 1", view.Machine.Name, [.. view.Bays.Select(BayShape.Of)]);
}

/// <summary>One bay.</summary>
internal sealed record BayShape(
    string Name,
    double RoomCelsius,
    IReadOnlyList<PartHeat> Heat,
    LimitsShape RestWatts,
    double WorkWatts,
    IReadOnlyList<string> NotKnown,
    BayFlow Flow,
    LimitsShape BayPascals,
    IReadOnlyList<BayWay> Ways,
    BayRise Rise,
    IReadOnlyList<PartWarmth> Parts,
    IReadOnlyList<SwitchWarmth> Switches,
    IReadOnlyList<BayCurvePoint> Curves,
    MistakeTableShape Mistakes)
{
    public static BayShape Of(BayView view) => new(
        view.Name,
        view.RoomCelsius,
        view.Heat,
        LimitsShape.Of(view.RestWatts.Least, view.RestWatts.Most),
        view.WorkWatts,
        view.NotKnown,
        view.Flow,
        LimitsShape.Of(view.BayPascals.Least, view.BayPascals.Most),
        view.Ways,
        view.Rise,
        view.Parts,
        view.Switches,
        view.Curves.Points,
        MistakeTableShape.Of(view.Mistakes));
}
