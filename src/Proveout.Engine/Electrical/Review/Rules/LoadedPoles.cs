using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A plug with many loaded poles warms itself: each then carries less.</summary>
internal sealed class LoadedPoles : IReviewRule
{
    // A pole counts from a fifth of its rating. Factors after the derating curves that IEC 61984 asks makers for; common practice.
    private const double CountsFrom = 0.2;

    public string Id => "loaded-poles";

    public string Words => "current of plugs with many loaded poles";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var flows = context.Currents.Terminals.ToDictionary(at => at.Node, at => at.Flow.Amperes);
        return
            from part in context.Design.Parts
            from connector in part.Type.Connectors
            where connector.Pluggable
            let loaded = Loaded(context, part, connector, flows).ToArray()
            where loaded.Length > 3
            let factor = loaded.Length > 6 ? 0.7 : 0.8
            let worst = loaded.MaxBy(pole => pole.Amperes / pole.Rated)
            where worst.Amperes > factor * worst.Rated
            select Found(part, connector, loaded.Length, factor, worst);
    }

    private Finding Found(Part part, Connector connector, int count, double factor, (string Name, double Amperes, double Rated) worst) => new(
        Id,
        FindingSeverity.Warning,
        [part.Designation, connector.Name],
        $"Plug {connector.Name} of {part.Designation} carries current on {count} poles, so each bears {ReviewContext.Number(100 * factor)} % of its {ReviewContext.Number(worst.Rated)} A; {worst.Name} carries {ReviewContext.Number(worst.Amperes)} A.",
        "Spread the current over more poles, or take a larger connector.",
        "IEC 61984 (derating); factors, common practice")
    {
        Numbers = [new("current", worst.Amperes, "A"), new("bears", factor * worst.Rated, "A"), new("loaded poles", count, "")],
    };

    private static IEnumerable<(string Name, double Amperes, double Rated)> Loaded(ReviewContext context, Part part, Connector connector, Dictionary<int, double> flows) =>
        from name in connector.Terminals
        let rated = part.Type.FindTerminal(name)!.Current?.Amperes
        let amperes = flows.GetValueOrDefault(context.Wiring.TerminalNode(new(part.Designation, name)))
        where rated is not null && amperes >= CountsFrom * rated
        select (name, amperes, rated.Value);
}
