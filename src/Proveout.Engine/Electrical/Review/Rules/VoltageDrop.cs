namespace Proveout.Engine.Electrical;

/// <summary>From the supply to a load and back no more than 5 % of the voltage is lost.</summary>
internal sealed class VoltageDrop : IReviewRule
{
    private const double MostFraction = 0.05;

    // From 20 °C to 70 °C, the limit of PVC: 1 + 0.00393 · 50 (IEC 60204-1:2005 annex G).
    private const double WarmFactor = 1.1965;

    public string Id => "voltage-drop";

    public string Words => "at most 5 % of the voltage lost on the way to a load";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var load in context.Loads)
        {
            var way = LoadWay.Of(context, load).Elements.Where(element => element.IsMetal).ToArray();
            var ohms = way.Sum(element => element.Kind == ElementKind.Copper ? element.NominalOhms * WarmFactor : element.NominalOhms);
            var fraction = ohms / (ohms + load.Element.NominalOhms);
            if (fraction <= MostFraction)
                continue;
            var conductors = way.Where(element => element.Kind == ElementKind.Copper).Select(element => element.Subject).Distinct().ToArray();
            yield return new Finding(
                Id,
                FindingSeverity.Warning,
                [load.Element.Subject, .. conductors],
                $"On the way from {load.Reach.Supply.Name} to {load.Element.Subject} and back, {ReviewContext.Number(ohms, 2)} Ω lose {ReviewContext.Number(100 * fraction)} % of the voltage at {ReviewContext.Number(load.NominalAmperes)} A, more than 5 %.",
                $"Take thicker or shorter conductors for {PathWords.List(conductors)}.",
                "IEC 60204-1 clause 12.5");
        }
    }
}
