using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Mains is far enough from its neighbours in a connector.</summary>
internal sealed class PoleSpacing : IReviewRule
{
    // IEC 60664-1 table F.4: 2.5 mm of creepage for 250 V, pollution degree 2, material group III, twice that for reinforced insulation. Between the middles of poles
    // twice as much leaves it between their metal: common practice.
    private const double MainsPitch = 5.0;
    private const double ToLowVoltage = 10.0;

    public string Id => "pole-spacing";

    public string Words => "distance of mains poles in connectors from each other and from extra-low voltage";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        let pitch = connector.Pitch?.Millimeters
        where pitch is not null
        let poles = connector.Terminals.Select(name => ClassOf(context, new(part.Designation, name))).ToArray()
        where poles.Any(IsMains)
        let asked = HasLowVoltageBeside(poles) ? ToLowVoltage : MainsPitch
        where pitch < asked
        select new Finding(
            Id,
            FindingSeverity.Error,
            [part.Designation, connector.Name],
            $"Connector {connector.Name} of {part.Designation} carries mains{(asked == ToLowVoltage ? " beside extra-low voltage" : "")} on poles {ReviewContext.Number(pitch.Value, 2)} mm apart; {ReviewContext.Number(asked)} mm are asked for.",
            asked == ToLowVoltage ? "Take separate connectors, or leave a pole free between them." : "Take a connector made for mains, with a pitch of 5 mm or more.",
            "IEC 60664-1 table F.4 (250 V, pollution degree 2); pitch, common practice")
        {
            Numbers = [new("pitch", pitch.Value, "mm"), new("least pitch", asked, "mm")],
        };

    private static NetClass ClassOf(ReviewContext context, TerminalReference terminal) =>
        context.Context.IsWired(terminal) ? context.Context.ClassOf(terminal) : NetClass.Spare;

    private static bool IsMains(NetClass net) => net is NetClass.Line or NetClass.Neutral;

    private static bool HasLowVoltageBeside(NetClass[] poles) =>
        poles.Zip(poles.Skip(1)).Any(pair => (IsMains(pair.First) && IsLow(pair.Second)) || (IsLow(pair.First) && IsMains(pair.Second)));

    private static bool IsLow(NetClass net) => net is NetClass.Positive or NetClass.ZeroVolt or NetClass.Signal;
}
