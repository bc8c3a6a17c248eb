using System.Text.Json.Serialization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Something between two nodes. Resistances in ohms, null when open; a junction has forward voltages too, from first node to second.</summary>
internal sealed record ElementShape(
    int Index, string Kind, int A, int B, double? LowOhms, double? NominalOhms, double? HighOhms, string Subject, string Name,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? ForwardLowVolts,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? ForwardHighVolts)
{
    public static ElementShape Of(NetworkElement element) => new(
        element.Index,
        element.Part switch { Diode => "junction", Insulation => "insulation", _ => ShapeWords.Of(element.Kind) },
        element.A,
        element.B,
        IntervalShape.ValueOf((element.Part as Insulation)?.AtLeast.Ohms ?? element.LowOhms),
        IntervalShape.ValueOf(element.NominalOhms),
        IntervalShape.ValueOf(element.HighOhms),
        element.Subject,
        element.Name,
        (element.Part as Diode)?.ForwardLow.Volts,
        (element.Part as Diode)?.ForwardHigh.Volts);
}
