using System.Text.Json.Serialization;
using Proveout.Engine.Electrical;

namespace Proveout.Cli;

/// <summary>What a fault does to the network: takes an element away, turns the sense of a contact, joins two nodes, adds in series with an element, or replaces its value.</summary>
internal sealed record ChangeShape(
    string What,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? Element = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? A = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? B = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] bool? OnlyWhileMated = null,
    double? LowOhms = null,
    double? HighOhms = null)
{
    public static ChangeShape Of(ElementChange change) => change switch
    {
        Cut cut => new("cut", Element: cut.Element),
        Invert invert => new("invert", Element: invert.Element),
        Join join => new("join", A: join.A, B: join.B, OnlyWhileMated: join.ByPlug, LowOhms: join.LowOhms, HighOhms: IntervalShape.ValueOf(join.HighOhms)),
        AddInSeries series => new("add-in-series", Element: series.Element, LowOhms: series.LowOhms, HighOhms: IntervalShape.ValueOf(series.HighOhms)),
        Replace replace => new("replace", Element: replace.Element, LowOhms: replace.LowOhms, HighOhms: IntervalShape.ValueOf(replace.HighOhms)),
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change of another kind."),
    };
}
