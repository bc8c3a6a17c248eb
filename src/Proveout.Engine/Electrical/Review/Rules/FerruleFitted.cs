using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A stranded end under a screw wears a ferrule, and no end in a clamp is stiffened with solder.</summary>
internal sealed class FerruleFitted : IReviewRule
{
    private const double SmallestFerrule = 0.5;

    public string Id => "ferrule-fitted";

    public string Words => "ferrules on stranded ends in screw clamps, no solder in clamps";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var unknown = new List<string>();
        foreach (var conductor in context.Design.Conductors)
            foreach (var (terminal, end) in new[] { (conductor.From, conductor.Make.FromEnd), (conductor.To, conductor.Make.ToEnd) })
            {
                var clamp = context.Design.FindPart(terminal.Part)!.Type.ConnectorOf(terminal.Terminal)?.Clamp;
                if (end == EndKind.Tinned && clamp is ClampKind.Screw or ClampKind.Spring)
                    yield return Tinned(conductor, terminal);
                else if (clamp != ClampKind.Screw || conductor.Make.Strands == StrandKind.Solid || !IsWanted(context, conductor))
                    continue;
                else if (end == EndKind.Bare)
                    yield return Bare(conductor, terminal);
                else if (end is null)
                    unknown.Add(conductor.Id);
            }

        foreach (var finding in NotKnown.Of(this, unknown, "how the ends under screws are dressed", "from-end: ferrule"))
            yield return finding;
    }

    private static bool IsWanted(ReviewContext context, Conductor conductor) => context.Settings.AnswerTo(ReviewQuestions.Ferrules) switch
    {
        "all" => true,
        "none" => false,
        _ => conductor.CrossSection.SquareMillimeters >= SmallestFerrule - 1e-9,
    };

    private Finding Bare(Conductor conductor, TerminalReference terminal) => new(
        Id,
        FindingSeverity.Warning,
        [conductor.Id, terminal.Part],
        $"The stranded end of {conductor.Id} at {terminal} is bare under a screw: strands spread, loosen, and reach the neighbour.",
        "Crimp a ferrule of its cross-section on it.",
        "IEC 60204-1 clause 13.1.1; DIN 46228; common practice");

    private Finding Tinned(Conductor conductor, TerminalReference terminal) => new(
        Id,
        FindingSeverity.Error,
        [conductor.Id, terminal.Part],
        $"The end of {conductor.Id} at {terminal} is stiffened with solder: solder creeps under a clamp, and the joint becomes loose and hot.",
        "Cut the soldered end off and crimp a ferrule.",
        "IEC 60204-1 clause 13.1.1; common practice");
}
