using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An electronic switch that is off lets go of its load, and one that is on has load enough to stay on.</summary>
internal sealed class RelayLeakage : IReviewRule
{
    // A lamp or input that gets a tenth of its current may glow or answer: common practice.
    private const double MostShare = 0.1;

    public string Id => "relay-leakage";

    public string Words => "leakage and least load of electronic switches against their loads";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from relay in context.Switches
        let ratings = context.PartOf(relay).Type.Ratings
        where ratings.Leakage is not null || ratings.LeastLoad is not null
        let flow = context.Currents.In(relay)
        where flow is not null
        from finding in Of(context, relay, ratings, flow)
        select finding;

    private IEnumerable<Finding> Of(ReviewContext context, NetworkElement relay, PartRatings ratings, Flow flow)
    {
        if (ratings.LeastLoad?.Amperes is { } least && flow.Amperes < least)
            yield return Found(relay, flow, $"works from {ReviewContext.Number(1000 * least)} mA; {PathWords.List(flow.Parts)} {(flow.Parts.Length == 1 ? "takes" : "take")} {ReviewContext.Number(1000 * flow.Amperes)} mA: it may not stay on", least);
        if (ratings.Leakage?.Amperes is { } leakage && (Releases(context, flow) is { } coil ? leakage > coil : leakage > MostShare * flow.Amperes))
            yield return Found(relay, flow, $"lets {ReviewContext.Number(1000 * leakage)} mA through while off; {PathWords.List(flow.Parts)} {(flow.Parts.Length == 1 ? "takes" : "take")} {ReviewContext.Number(1000 * flow.Amperes)} mA and may stay on", leakage);
    }

    // The current below which a single coil behind the switch surely lets go; null when the load is no coil.
    private static double? Releases(ReviewContext context, Flow flow) =>
        flow.Parts is [var only] && context.Design.FindPart(only)!.Type.Circuit.OfType<Drive>().FirstOrDefault() is { } drive
            ? drive.DropsOut.Volts / flow.Demands[0].Reach.Supply.Volts * flow.Amperes
            : null;

    private Finding Found(NetworkElement relay, Flow flow, string what, double limit) => new(
        Id,
        FindingSeverity.Warning,
        [relay.Subject, .. flow.Parts],
        $"{relay.Subject} {what}.",
        "Take a relay with contacts, or put a load resistor beside the load.",
        "ratings from the part type; common practice")
    {
        Numbers = [new("limit", 1000 * limit, "mA"), new("load current", 1000 * flow.Amperes, "mA")],
    };
}
