using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A closing contact is used where an opening one is meant, or the other way round.</summary>
internal sealed class ContactSense : IWiringFaultRule
{
    public string Kind => "contact-sense";

    public string Words => "contacts of the other sense";

    public double Prior => Priors.ContactSense;

    public IEnumerable<WiringFault> Generate(WiringContext context) => OtherThrow(context).Concat(OtherBlock(context));

    /// <summary>True when two terminals are the opening and the closing side of one change-over contact.</summary>
    public static bool AreThrows(MachineDesign design, TerminalReference a, TerminalReference b) =>
        a.Part == b.Part && design.FindPart(a.Part) is { } part && Throws(part).Any(pair => pair.Joins(a.Terminal, b.Terminal));

    // Change-over: the conductor sits on the other throw.
    private IEnumerable<WiringFault> OtherThrow(WiringContext context) =>
        from part in context.Design.Parts
        from pair in Throws(part)
        from move in new[] { (From: pair.A, To: pair.B), (From: pair.B, To: pair.A) }
        let @from = new TerminalReference(part.Designation, move.From)
        let to = new TerminalReference(part.Designation, move.To)
        from conductor in context.ConductorsAt(@from)
        where conductor.From != to && conductor.To != to
        select WiringContext.Fault(
            this,
            $"{conductor.Id}:{@from}:{to}",
            $"Conductor {WiringContext.Name(conductor)} lands on {to} instead of {@from}: {part.Designation} opens where it should close.",
            [conductor.Id, part.Designation],
            OfPart(part),
            "Hand: state of the input with the switch released and pressed.",
            context.Move(conductor, @from, to));

    // A button or switch with single contacts: the block of the other sense was fitted.
    private IEnumerable<WiringFault> OtherBlock(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Part is Contact
        let part = context.Design.FindPart(element.Subject)!
        where part.Type.ClassLetter is "S" or "B" && !Throws(part).Any()
        where !part.Type.Terminals.Any(terminal => terminal.Role is TerminalRole.Line or TerminalRole.Neutral)
        let contact = (Contact)element.Part!
        where part.Type.Controls.First(control => control.Name == contact.Control).Positions.Count == 2
        select WiringContext.Fault(
            this,
            $"{part.Designation}.{element.Name}",
            $"{element.Name} of {part.Designation} is of the other sense: it conducts when it should be open.",
            [part.Designation],
            OfPart(part),
            "Hand: ohms across the contact with the button released and pressed.",
            new Invert(element.Index));

    private static IEnumerable<SwitchedPairs> Throws(Part part)
    {
        var contacts = part.Type.Circuit.OfType<Contact>().ToArray();
        return from one in contacts
               from two in contacts
               where one.A == two.A && one.Control == two.Control && string.CompareOrdinal(one.B, two.B) < 0
               where !one.ClosedAt.Intersect(two.ClosedAt, StringComparer.Ordinal).Any()
               where part.Type.FindTerminal(one.B) is not null && part.Type.FindTerminal(two.B) is not null
               select new SwitchedPairs(one.B, two.B);
    }

    private static Consequence OfPart(Part part) => part.Type.ClassLetter == "S"
        ? new(Severity.Damage, "Pressing it does the opposite: a stop that should cut the energy lets it through, or nothing starts.")
        : new(Severity.Damage, "It tells the opposite: the axis runs into its end, or never moves.");
}
