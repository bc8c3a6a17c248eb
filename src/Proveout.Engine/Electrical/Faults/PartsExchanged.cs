using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Two parts of one place are exchanged: two fans, two sensors, a heater and a sensor; each is wired where the other belongs.</summary>
internal sealed class PartsExchanged : IWiringFaultRule
{
    // Loads and sensors: what a person fits and then connects. IEC 81346-2 letters.
    private static readonly string[] Letters = ["B", "E", "G", "M", "P", "R", "S"];

    public string Kind => "parts-exchanged";

    public string Words => "parts of one place exchanged";

    public double Prior => Priors.PartsExchanged;

    public IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var parts = context.Design.Parts.Where(part => part.Place.Length > 0 && Letters.Contains(part.Type.ClassLetter)).ToArray();
        return from one in parts
               from two in parts
               where string.CompareOrdinal(one.Designation, two.Designation) < 0 && one.Place == two.Place && AreAlike(context, one, two)
               select Exchange(context, one, two);
    }

    private static bool AreAlike(WiringContext context, Part one, Part two) =>
        WiredNames(context, one) is { Length: > 0 } names
        && names.SequenceEqual(WiredNames(context, two))
        && names.All(name => (one.Type.ConnectorOf(name)?.Pluggable ?? false) == (two.Type.ConnectorOf(name)?.Pluggable ?? false));

    private static string[] WiredNames(WiringContext context, Part part) =>
        [.. TerminalPairs.WiredTerminals(context, part).Select(terminal => terminal.Terminal).Order(StringComparer.Ordinal)];

    private WiringFault Exchange(WiringContext context, Part one, Part two)
    {
        var terminals = WiredNames(context, one)
            .SelectMany(name => new[] { new TerminalReference(one.Designation, name), new TerminalReference(two.Designation, name) })
            .ToArray();
        var isPlug = one.Type.ConnectorOf(terminals[0].Terminal)?.Pluggable ?? false;
        var moved = Rearrangement.Of(context, terminals, terminal => terminal with { Part = Other(terminal.Part) });
        return WiringContext.Fault(
            this,
            $"{one.Designation}:{two.Designation}",
            $"{one.Designation} ({one.Name}) and {two.Designation} ({two.Name}) are exchanged: each is connected where the other belongs.",
            [one.Designation, two.Designation],
            OfParts(context, one, two, moved),
            "Log: command or warm one of them alone and see which answers.",
            isPlug ? [.. terminals.SelectMany(terminal => Cross(context, terminal, terminal with { Part = Other(terminal.Part) }))] : moved.Changes(context));

        string Other(string part) => part == one.Designation ? two.Designation : one.Designation;
    }

    private static Consequence OfParts(WiringContext context, Part one, Part two, Rearrangement moved) => one.Type.ClassLetter switch
    {
        _ when one.Type.Id != two.Type.Id => Consequence.Worse(moved.Consequence(context), new(Severity.Damage, "Each gets what the other was made for.")),
        "B" when one.Type.Circuit.OfType<Resistor>().Any() => new(Severity.Fire, "One place is heated by the temperature of the other, and its own is not watched."),
        "M" => new(Severity.DoesNotWork, "Another axis moves than the one that is told to."),
        _ => new(Severity.DoesNotWork, "The one answers to what the other is told."),
    };

    private static IEnumerable<ElementChange> Cross(WiringContext context, TerminalReference plug, TerminalReference socket)
    {
        var mating = context.MatingOf(plug);
        yield return new Cut(mating.Index);
        yield return new Join(mating.A, context.Wiring.TerminalNode(socket), mating.LowOhms, mating.HighOhms, ByPlug: true);
    }
}
