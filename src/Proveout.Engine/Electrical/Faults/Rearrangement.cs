using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Ends of conductors that land on other terminals than their own, several at once.</summary>
/// <param name="Moves">Which end moves from where to where.</param>
internal sealed record Rearrangement(IReadOnlyList<(Conductor Conductor, TerminalReference From, TerminalReference To)> Moves)
{
    /// <summary>Everything that lands on some terminals moves by a rule; null for an end that stays.</summary>
    public static Rearrangement Of(WiringContext context, IEnumerable<TerminalReference> terminals, Func<TerminalReference, TerminalReference?> destination) =>
        new(
        [
            .. from terminal in terminals
               let to = destination(terminal)
               where to is not null && to.Value != terminal
               from conductor in context.ConductorsAt(terminal)
               where conductor.From != to.Value && conductor.To != to.Value
               select (conductor, terminal, to.Value),
        ]);

    /// <summary>The conductors that move.</summary>
    public IEnumerable<string> Conductors => Moves.Select(move => move.Conductor.Id).Distinct();

    /// <summary>True when some end lands on other metal than its own.</summary>
    public bool ChangesSomething(WiringContext context) => Moves.Any(move => !context.AreSame(move.From, move.To));

    /// <summary>What it does to the network.</summary>
    public ElementChange[] Changes(WiringContext context) => [.. Moves.SelectMany(move => context.Move(move.Conductor, move.From, move.To))];

    /// <summary>The worst that follows from any of the ends.</summary>
    public Consequence Consequence(WiringContext context) =>
        Moves.Select(move => context.OfMoving(move.Conductor, move.From, move.To)).Aggregate(ConsequenceRules.Nothing, Electrical.Consequence.Worse);
}
