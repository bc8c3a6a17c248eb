using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Every conductor of a row or plug sits one place further than it should, where the row has a free end.</summary>
internal sealed class ContactsShifted : IWiringFaultRule
{
    private const int FewestTerminals = 3;

    public string Kind => "contacts-shifted";

    public string Words => "rows wired one place off";

    public double Prior => Priors.ContactsShifted;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from row in TerminalNeighbours.RowsOf(part)
        where row.Length >= FewestTerminals
        let terminals = row.Select(name => new TerminalReference(part.Designation, name)).ToArray()
        from step in new[] { 1, -1 }
        where HasRoom(context, terminals, step)
        let shifted = Rearrangement.Of(context, terminals, terminal => At(terminals, Array.IndexOf(terminals, terminal) + step))
        where shifted.Conductors.Skip(1).Any() && shifted.ChangesSomething(context)
        select WiringContext.Fault(
            this,
            $"{part.Designation}:{row[0]}:{step}",
            $"The row of {part.Designation} from {row[0]} to {row[^1]} is wired one place off, towards {(step > 0 ? row[^1] : row[0])}.",
            [part.Designation, .. shifted.Conductors],
            shifted.Consequence(context),
            "Eye: first conductor of the row against the first marking.",
            shifted.Changes(context));

    private static TerminalReference? At(TerminalReference[] row, int place) => place >= 0 && place < row.Length ? row[place] : null;

    private static bool HasRoom(WiringContext context, TerminalReference[] row, int step) => !context.IsWired(step > 0 ? row[^1] : row[0]);
}
