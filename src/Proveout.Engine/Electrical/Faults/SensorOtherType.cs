using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A temperature sensor of another family was fitted: platinum for a thermistor, or the other way round.</summary>
internal sealed class SensorOtherType : IWiringFaultRule
{
    private const double LeastOhms = 500;
    private const double Between = 5e3;

    // Platinum of 1000 ohm at 15 to 30 °C (IEC 60751); thermistor of 100 kohm at 25 °C over the same span (beta equation, common practice).
    private static readonly (double Low, double High) Platinum = (1057, 1119);
    private static readonly (double Low, double High) Thermistor = (73e3, 182e3);

    public string Kind => "sensor-other-type";

    public string Words => "temperature sensors of another family";

    public double Prior => Priors.SensorOtherType;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in OwnElements.Of(context)
        where context.Design.FindPart(element.Subject)!.Type is { ClassLetter: "B", Terminals.Count: <= 3 } && element.LowOhms >= LeastOhms
        let other = element.LowOhms > Between ? (Words: "a platinum sensor", Band: Platinum) : (Words: "a thermistor", Band: Thermistor)
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"{element.Subject} is {other.Words}, which the input is not made for.",
            [element.Subject],
            new Consequence(Severity.Fire, "The temperature shown is false: far too hot when cold, or cold when hot."),
            "Log: all sensors cold and equal, within 2 K of the room.",
            new Replace(element.Index, other.Band.Low, other.Band.High));
}
