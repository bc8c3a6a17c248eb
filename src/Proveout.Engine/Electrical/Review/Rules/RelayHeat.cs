using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An electronic switch stays cool enough on what it is mounted on.</summary>
internal sealed class RelayHeat : IReviewRule
{
    // 125 °C is the end, 115 °C the design value: common practice.
    private const double DesignJunction = 115;

    public string Id => "relay-heat";

    public string Words => "heat of electronic switches against their heat sinks";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var unknown = new List<string>();
        foreach (var relay in context.Switches)
        {
            var (part, flow) = (context.PartOf(relay), context.Currents.In(relay));
            if (flow is null || part.Type.Ratings is not { Drop.Volts: var drop, JunctionToBase.KelvinsPerWatt: var inside })
                continue;
            if (SwitchSink.Of(context, part) is not { } toAir)
                unknown.Add(part.Designation);
            else if (Found(context, part, flow, drop, inside, toAir) is { } finding)
                yield return finding;
        }

        foreach (var finding in NotKnown.Of(this, unknown, "the thermal resistance to air", "ratings: {to-air: 2 K/W}"))
            yield return finding;
    }

    private Finding? Found(ReviewContext context, Part part, Flow flow, double drop, double inside, SwitchSink toAir)
    {
        var watts = drop * flow.Amperes;
        var most = part.Type.Ratings.Junction?.DegreesCelsius ?? DesignJunction;
        var junction = HeatSink.Junction(context.Ambient, watts, inside, HeatSink.BaseToSink, toAir.KelvinsPerWatt);
        if (junction <= most)
            return null;
        var asked = HeatSink.MostSinkToAir(most, context.Ambient, watts, inside, HeatSink.BaseToSink);
        return new(
            Id,
            FindingSeverity.Error,
            [part.Designation],
            $"{part.Designation} makes {ReviewContext.Number(watts)} W at {ReviewContext.Number(flow.Amperes, 2)} A; on {toAir.Name} ({ReviewContext.Number(toAir.KelvinsPerWatt, 2)} K/W) in {ReviewContext.Number(context.Ambient)} °C its junction comes to {ReviewContext.Number(Math.Ceiling(junction), 0)} °C, above {ReviewContext.Number(most)} °C.",
            asked > 0
                ? $"Take a heat sink of at most {ReviewContext.Number(Math.Floor(asked * 10) / 10)} K/W, with paste."
                : "Take a larger relay, or move air over it.",
            "Tj = Ta + P (Rjc + Rcs + Rsa); ratings from the part types")
        {
            Numbers = [new("heat", watts, "W"), new("junction", junction, "°C"), new("limit", most, "°C"), new("heat sink asked", asked, "K/W")],
        };
    }
}
