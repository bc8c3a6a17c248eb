using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Line and neutral have changed places at a part, so that what switches and protects sits in the neutral.</summary>
internal sealed class LineNeutralSwapped : IWiringFaultRule
{
    public string Kind => "line-neutral-swapped";

    public string Words => "line and neutral swapped";

    public double Prior => Priors.LineNeutralSwapped;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        let wired = TerminalPairs.WiredTerminals(context, part).ToArray()
        from a in wired
        from b in wired
        where a != b && context.ClassOf(a) == NetClass.Line && context.ClassOf(b) == NetClass.Neutral
        where AreOnOneSide(part, a, b)
        from one in context.ConductorsAt(a)
        from two in context.ConductorsAt(b)
        where one.Id != two.Id
        select WiringContext.Fault(
            this,
            $"{one.Id}:{two.Id}:{a}:{b}",
            $"Line and neutral are swapped at {part.Designation}: {WiringContext.Name(one)} lands on {b.Terminal} and {WiringContext.Name(two)} on {a.Terminal}.",
            [one.Id, two.Id, part.Designation],
            new Consequence(Severity.Shock, "It works, but fuse, switch and relay behind it sit in the neutral: the load stays at line voltage when it is off."),
            "Eye: colours (blue is neutral) and markings at both ends; ohms from the plug's line pin to the fuse and the relay.",
            [.. context.Move(one, a, b), .. context.Move(two, b, a)]);

    /// <summary>True when one of two terminals carries line and the other neutral.</summary>
    public static bool IsMainsPair(WiringContext context, TerminalReference a, TerminalReference b) =>
        a.Part == b.Part
        && (context.ClassOf(a), context.ClassOf(b)) is (NetClass.Line, NetClass.Neutral) or (NetClass.Neutral, NetClass.Line)
        && AreOnOneSide(context.Design.FindPart(a.Part)!, a, b);

    // Of a switch with two poles the pair on one side is swapped; in for out is another mistake.
    private static bool AreOnOneSide(Part part, TerminalReference a, TerminalReference b)
    {
        var contacts = part.Type.Circuit.OfType<Contact>().ToArray();
        return !contacts.Any(contact => contact.A == a.Terminal || contact.B == a.Terminal)
            || contacts.Any(contact => contact.A == a.Terminal) == contacts.Any(contact => contact.A == b.Terminal);
    }
}
