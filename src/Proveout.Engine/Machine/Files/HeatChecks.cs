namespace Proveout.Engine.Machine;

/// <summary>Checks that what a machine says of what it heats can be.</summary>
internal sealed class HeatChecks(Section<PartEntry> parts, Problems problems)
{
    public void Check(HeatedBody body, Node node)
    {
        if (body.Heater.Length > 0 && !parts.Contains(body.Heater))
            problems.AddUnknown("unknown-part", node.Under("heater").Place, body.Heater, "a part of this machine", parts.Names);
        if (body.Plate is { Depth: null })
            problems.Add("missing-thickness", node.Under("plate").Place, $"The plate {Quote.Of(body.Name)} has no thickness.", "Write three lengths, such as `300 x 300 x 6 mm`.");
        var isBlock = body.Uptake is not null || body.Loss is not null;
        if (body.Plate is not null && isBlock)
            problems.Add("plate-and-block", node.NamePlace, $"{Quote.Of(body.Name)} is a plate, and has what only a block has.", "Leave out `uptake` and `loss`, or leave out `plate`.");
        else if (body.Plate is null && (body.Uptake is null || body.Loss is null))
            problems.Add("missing-key", node.NamePlace, $"{Quote.Of(body.Name)} does not say what is heated.", "Give `plate: 300 x 300 x 6 mm`, or both `uptake: 28 J/K` and `loss: 0.09 W/K`.");
        if (body.Insulation is not null && body.Plate is null)
            problems.Add("unknown-key", node.Under("insulation").Place, "`insulation` is for plates.", "Leave it out, and count it in `loss`.");
    }
}
