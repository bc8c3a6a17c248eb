using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What fuses, contacts, tracks and conductors turn into heat: resistance times the square of the current.</summary>
internal static class CopperLosses
{
    public static IEnumerable<LossLine> Lines(ReviewContext context, HashSet<string> inside, double reachMetres)
    {
        var flowing = context.Wiring.Elements.Where(element => element.IsMetal || element.Part is Contact or Fuse).Select(element => (Element: element, Flow: context.Currents.In(element))).Where(item => item.Flow is not null).ToArray();
        foreach (var part in flowing.Where(item => item.Element.Kind is ElementKind.Inside or ElementKind.Jumper or ElementKind.Mating && inside.Contains(item.Element.Subject)).GroupBy(item => item.Element.Subject))
            yield return new(
                part.Key,
                LossKind.Contacts,
                part.Sum(item => LeastWatts(item.Element, item.Flow!)),
                part.Sum(item => MostWatts(item.Element, Rest(item.Flow!))),
                part.Sum(item => MostWatts(item.Element, item.Flow!.Amperes)),
                "fuses, contacts, plugs and tracks: resistance times the square of the current");

        var conductors = flowing.Where(item => item.Element.Kind is ElementKind.Copper or ElementKind.Joint && context.FindConductor(item.Element.Subject) is not null).ToArray();
        var shares = conductors.Select(item => ShareOf(context.FindConductor(item.Element.Subject)!, inside, reachMetres)).ToArray();
        yield return new(
            "",
            LossKind.Conductors,
            conductors.Zip(shares).Sum(pair => pair.Second.Low * LeastWatts(pair.First.Element, pair.First.Flow!)),
            conductors.Zip(shares).Sum(pair => pair.Second.High * MostWatts(pair.First.Element, Rest(pair.First.Flow!))),
            conductors.Zip(shares).Sum(pair => pair.Second.High * MostWatts(pair.First.Element, pair.First.Flow!.Amperes)),
            "conductors with both ends in it, and what may lie in it of those with one");
    }

    private static double Rest(Flow flow) => flow.Demands.Sum(demand => demand.SteadyAmperes);

    private static double LeastWatts(NetworkElement element, Flow flow) => LossShares.Least * Rest(flow) is var amperes ? amperes * amperes * element.LowOhms : 0;

    // An element that may be open carries no current then: its usual resistance is the most that heats.
    private static double MostWatts(NetworkElement element, double amperes) =>
        LossShares.Most * amperes * LossShares.Most * amperes * (double.IsFinite(element.HighOhms) ? element.HighOhms : element.NominalOhms);

    private static (double Low, double High) ShareOf(Conductor conductor, HashSet<string> inside, double reachMetres) =>
        (inside.Contains(conductor.From.Part), inside.Contains(conductor.To.Part)) switch
        {
            (true, true) => (1, 1),
            (false, false) => (0, 0),
            _ => (0, Math.Min(1, reachMetres / conductor.Length.Meters)),
        };
}
