using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>From the supply to a load and back no more of the voltage is lost than allowed, with everything beside it at work.</summary>
internal sealed class VoltageDrop : IReviewRule
{
    private const double MostFraction = 0.05;

    public string Id => "voltage-drop";

    public string Words => "at most 5 % of the voltage lost on the way to a load";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var most = context.Settings.VoltageDrop?.DecimalFractions ?? MostFraction;
        foreach (var demand in context.Demands.All.Where(demand => demand.WorstAmperes > 0))
        {
            var way = LoadWay.Of(demand).Where(element => element.IsMetal).ToArray();
            var lost = way.Sum(element => Lost(context, element, context.Currents.In(element)?.Amperes ?? 0));
            if (lost <= most * demand.Reach.Supply.Volts)
                continue;
            var worksFrom = WorksFrom(context, demand);
            yield return Found(demand, way, lost, most, worksFrom is null || demand.Reach.Supply.Volts - lost < worksFrom);
        }
    }

    private Finding Found(Demand demand, NetworkElement[] way, double lost, double most, bool matters)
    {
        var conductors = way.Where(element => element.Kind == ElementKind.Copper).Select(element => element.Subject).Distinct().ToArray();
        return new(
            Id,
            matters ? FindingSeverity.Warning : FindingSeverity.Note,
            [demand.Part, .. conductors],
            $"On the way from {demand.Reach.Supply.Name} to {demand.Part} and back, {ReviewContext.Number(lost, 2)} V are lost, {ReviewContext.Number(100 * lost / demand.Reach.Supply.Volts)} % of the voltage and more than {ReviewContext.Number(100 * most)} %{(matters ? "" : "; it still works")}.",
            $"Take thicker or shorter conductors for {(conductors.Length == 0 ? "it" : PathWords.List(conductors))}.",
            "IEC 60204-1 clause 12.5; copper at 70 °C")
        {
            Numbers = [new("lost", lost, "V"), new("share", 100 * lost / demand.Reach.Supply.Volts, "%")],
        };
    }

    private static double Lost(ReviewContext context, NetworkElement element, double amperes) =>
        element.Kind == ElementKind.Copper && context.FindConductor(element.Subject) is { } conductor
            ? LostVoltage.OnWarmCopper(conductor.Length.Meters, conductor.CrossSection.SquareMillimeters, amperes)
            : element.NominalOhms * amperes;

    // The voltage from which the part's powered input at these nodes works; null when none is said.
    private static double? WorksFrom(ReviewContext context, Demand demand) =>
        context.Design.FindPart(demand.Part)!.Type.Circuit.OfType<Consumer>()
            .Where(consumer => context.FindNode(demand.Part, consumer.A) == demand.Fed)
            .Select(consumer => consumer.WorksFrom?.Volts)
            .Max();
}
