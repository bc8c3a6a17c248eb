namespace Proveout.Engine.Machine;

/// <summary>What differs between the conductors of two designs.</summary>
internal static class ConductorChanges
{
    public static IEnumerable<DesignChange> Between(MachineDesign before, MachineDesign after, TerminalRanks ranks)
    {
        var pairs = ConductorPairs.Of(before, after);
        DesignChange Change(ChangeKind kind, Conductor conductor, string sentence) =>
            new(kind, ranks.Of(conductor), [conductor.Id], sentence) { Terminals = [conductor.From, conductor.To] };

        return pairs.Removed.Select(gone => Change(ChangeKind.ConductorRemoved, gone, $"{ChangeWords.Of(gone)} from {gone.From} to {gone.To} is no longer there."))
            .Concat(pairs.Added.Select(come => Change(ChangeKind.ConductorAdded, come, $"{ChangeWords.Of(come)} is new, from {come.From} to {come.To}.")))
            .Concat(
                from pair in pairs.Matched
                from difference in Differences(pair.Before, pair.After)
                select Change(difference.Kind, pair.After, difference.Sentence))
            .Concat(pairs.Matched
                .Where(pair => pair.Before.Id != pair.After.Id)
                .Select(pair => new DesignChange(
                    ChangeKind.ConductorRenamed,
                    ranks.Of(pair.After),
                    [pair.Before.Id, pair.After.Id],
                    $"{pair.Before.Id} from {pair.After.From} to {pair.After.To} is now called {pair.After.Id}: change its labels.")))
            .Concat(Ends([.. pairs.Matched.SelectMany(MovesOf)], ranks));
    }

    private static IEnumerable<(ChangeKind Kind, string Sentence)> Differences(Conductor old, Conductor now)
    {
        if (old.CrossSection.SquareMillimeters != now.CrossSection.SquareMillimeters)
            yield return (ChangeKind.SectionChanged, $"{now.Id} now has {ChangeWords.Of(now.CrossSection)}, not {ChangeWords.Of(old.CrossSection)}.");
        if (old.Colour != now.Colour)
            yield return (ChangeKind.ColourChanged, $"{now.Id} is now {ColourWords.Of(now.Colour)}, not {ColourWords.Of(old.Colour)}.");
        if (old.Length.Millimeters != now.Length.Millimeters)
            yield return (ChangeKind.LengthChanged, $"{now.Id} is now {ChangeWords.Of(now.Length)} long, not {ChangeWords.Of(old.Length)}.");
        if (!old.Route.Equals(now.Route))
            yield return (ChangeKind.WayChanged, $"{now.Id} now runs {ChangeWords.Way(now.Route)}, not {ChangeWords.Way(old.Route)}.");
    }

    private static IEnumerable<Move> MovesOf((Conductor Before, Conductor After) pair)
    {
        if (pair.Before.From != pair.After.From)
            yield return new(pair.After.Id, pair.Before.From, pair.After.From, pair.After);
        if (pair.Before.To != pair.After.To)
            yield return new(pair.After.Id, pair.Before.To, pair.After.To, pair.After);
    }

    private static IEnumerable<DesignChange> Ends(List<Move> moves, TerminalRanks ranks)
    {
        while (moves.Count > 0)
        {
            var one = moves[0];
            moves.RemoveAt(0);
            var place = moves.FindIndex(other => other.Conductor != one.Conductor && other.From == one.To && other.To == one.From);
            if (place < 0)
            {
                yield return ChangeOf(ChangeKind.EndMoved, [one], $"{one.Conductor} now lands on {one.To}, not on {one.From}.", ranks);
                continue;
            }

            var two = moves[place];
            moves.RemoveAt(place);
            yield return ChangeOf(
                ChangeKind.EndsSwapped,
                [one, two],
                $"{one.Conductor} and {two.Conductor} have changed places: {one.Conductor} now lands on {one.To}, {two.Conductor} on {two.To}.",
                ranks);
        }
    }

    private static DesignChange ChangeOf(ChangeKind kind, IReadOnlyList<Move> moves, string sentence, TerminalRanks ranks)
    {
        var terminals = moves.SelectMany(move => new[] { move.From, move.To }).Distinct().ToValueList();
        var ends = terminals.Concat(moves.SelectMany(move => new[] { move.Now.From, move.Now.To }));
        return new(kind, ranks.Of(ends), moves.Select(move => move.Conductor).ToValueList(), sentence) { Terminals = terminals };
    }

    private sealed record Move(string Conductor, TerminalReference From, TerminalReference To, Conductor Now);
}
