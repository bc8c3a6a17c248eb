using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One conductor lands on a terminal.</summary>
internal sealed class OneConductorPerTerminal : IReviewRule
{
    public string Id => "one-conductor-per-terminal";

    public string Words => "one conductor on each terminal";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from terminal in context.Design.Terminals
        let conductors = context.Context.ConductorsAt(terminal).Select(conductor => conductor.Id).ToArray()
        where conductors.Length > 1 && !context.Context.ConductorsAt(terminal).All(conductor => EndAt(conductor, terminal) == EndKind.TwinFerrule)
        let isProtective = context.Design.FindTerminal(terminal)!.Role == TerminalRole.ProtectiveEarth
        select new Finding(
            Id,
            isProtective ? FindingSeverity.Error : FindingSeverity.Warning,
            [terminal.Part, .. conductors],
            $"{PathWords.List(conductors)} land on one terminal, {terminal}.",
            isProtective ? "Give each protective conductor a clamp of its own." : "Give each a clamp of its own, or use a twin ferrule where the terminal is made for it.",
            isProtective ? "IEC 60204-1 clause 13.1.1, protective conductors" : "IEC 60204-1 clause 13.1.1");

    private static EndKind? EndAt(Conductor conductor, TerminalReference terminal) =>
        conductor.From == terminal ? conductor.Make.FromEnd : conductor.Make.ToEnd;
}
