using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One colour does not mean two things that hurt when they are taken for each other.</summary>
internal sealed class ColourReuse : IReviewRule
{
    private const string Source = "IEC 60445 clauses 6.1 and 6.2; IEC 60204-1 clause 13.2";

    public string Id => "colour-reuse";

    public string Words => "no colour for both poles of extra-low voltage, none that is taken for neutral or protective earth";

    public IEnumerable<Finding> Review(ReviewContext context) => BothPoles(context).Concat(TwoVoltages(context)).Concat(BesideNeutral(context)).Concat(AlmostProtective(context));

    private IEnumerable<Finding> BothPoles(ReviewContext context) =>
        from colour in context.Design.Conductors.Where(conductor => !context.IsMains(conductor)).GroupBy(conductor => conductor.Colour)
        let positive = colour.Where(conductor => IsOn(context, conductor, TerminalRole.Positive)).Select(conductor => conductor.Id).ToArray()
        let zero = colour.Where(conductor => IsOn(context, conductor, TerminalRole.ZeroVolt)).Select(conductor => conductor.Id).ToArray()
        where positive.Length > 0 && zero.Length > 0 && colour.Key != ConductorColour.GreenYellow
        let few = positive.Length < zero.Length ? positive : zero
        select new Finding(
            Id,
            FindingSeverity.Warning,
            [.. few],
            $"{ColourWords.Of(colour.Key)} marks plus on {Counted(positive)} and 0 V on {Counted(zero)}: one taken for the other destroys what it feeds.",
            "Keep one colour for plus and another for 0 V in the whole machine.",
            Source);

    private IEnumerable<Finding> TwoVoltages(ReviewContext context) =>
        from colour in context.Design.Conductors.Where(conductor => IsOn(context, conductor, TerminalRole.Positive)).GroupBy(conductor => conductor.Colour)
        let voltages = colour.SelectMany(conductor => context.SuppliesAt(context.Wiring.TerminalNode(conductor.From)).Select(reach => reach.Supply.Volts)).Distinct().Order().ToArray()
        where voltages.Length > 1
        select new Finding(
            Id,
            FindingSeverity.Note,
            [.. colour.Select(conductor => conductor.Id)],
            $"{ColourWords.Of(colour.Key)} marks plus of {PathWords.List([.. voltages.Select(volts => $"{ReviewContext.Number(volts)} V")])}: a lead of the one on the other destroys what it feeds.",
            "Give each voltage a colour of its own, or tell them apart by labels.",
            Source);

    private IEnumerable<Finding> BesideNeutral(ReviewContext context) =>
        from route in context.Design.Routes
        let inside = context.Design.Conductors.Where(conductor => conductor.Route.Contains(route.Name, StringComparer.Ordinal)).ToArray()
        where inside.Any(context.IsMains)
        let blue = inside.Where(conductor => conductor.Colour == ConductorColour.Blue && !context.IsMains(conductor)).Select(conductor => conductor.Id).ToArray()
        where blue.Length > 0
        select new Finding(
            Id,
            FindingSeverity.Warning,
            [route.Name, .. blue],
            $"In {route.Name}, where mains runs, {PathWords.List(blue)} {(blue.Length == 1 ? "is" : "are")} blue and no neutral.",
            "Take another colour beside mains; blue is the neutral's.",
            Source);

    private IEnumerable<Finding> AlmostProtective(ReviewContext context) =>
        from conductor in context.Design.Conductors
        where conductor.Colour is ConductorColour.Green or ConductorColour.Yellow && context.IsMains(conductor)
        select new Finding(
            Id,
            FindingSeverity.Warning,
            [conductor.Id],
            $"{conductor.Id} from {conductor.From} to {conductor.To} carries mains and is {ColourWords.Of(conductor.Colour)}, which is taken for green-yellow.",
            "Take black or brown for the line, blue for the neutral.",
            Source);

    // By what the terminals themselves are: a switched lead between two other terminals says nothing.
    private static bool IsOn(ReviewContext context, Conductor conductor, TerminalRole role) =>
        context.Design.FindTerminal(conductor.From)!.Role == role && context.Design.FindTerminal(conductor.To)!.Role == role;

    private static string Counted(string[] conductors) => conductors.Length <= 3 ? PathWords.List(conductors) : $"{conductors[0]} and {conductors.Length - 1} others";
}
