namespace Proveout.Engine.Electrical;

/// <summary>A conductor bears what flows in it where it lies: method, warm air and loaded circuits beside it counted.</summary>
internal sealed class ConductorBearsLoad : IReviewRule
{
    public string Id => "conductor-bears-load";

    public string Words => "current in a conductor against what it bears in its route";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from conductor in context.Design.Conductors
        let flow = context.Currents.In(context.Context.CopperOf(conductor))
        where flow is not null
        let bearing = context.Loading.Of(conductor)
        where flow.Amperes > bearing.Amperes
        where flow.Amperes > SharedWays.Of(context, context.Context.CopperOf(conductor).A, flow) * bearing.Amperes
        select new Finding(
            Id,
            FindingSeverity.Error,
            [conductor.Id, .. flow.Parts],
            $"{conductor.Id} from {conductor.From} to {conductor.To} has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm² and bears {ReviewContext.Number(bearing.Amperes)} A ({bearing.Words}); {PathWords.List(flow.Parts)} {(flow.Parts.Length == 1 ? "takes" : "take")} {ReviewContext.Number(flow.Amperes)} A through it.",
            "Take a thicker conductor, a second route, or less beside it.",
            $"IEC 60204-1 clause 12.4 and annex D; {CurrentCapacity.SourceFor(conductor.CrossSection.SquareMillimeters, bearing.Method)}")
        {
            Numbers = [new("current", flow.Amperes, "A"), new("capacity", bearing.Amperes, "A"), new("circuits", bearing.Circuits, "")],
        };
}
