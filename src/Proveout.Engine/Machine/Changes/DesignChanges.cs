namespace Proveout.Engine.Machine;

/// <summary>What differs between two designs of a machine, the most dangerous first.</summary>
public static class DesignChanges
{
    /// <summary>The differences; empty when a builder would find none.</summary>
    /// <param name="before">The design as it was.</param>
    /// <param name="after">The design as it is now, or as it was built.</param>
    public static IReadOnlyList<DesignChange> Between(MachineDesign before, MachineDesign after)
    {
        var renamed = PartNames.Renamed(before, after);
        var inNewNames = PartNames.Applied(before, renamed);
        var ranks = new TerminalRanks(inNewNames, after);
        return
        [
            .. Title(before, after)
                .Concat(PlaceChanges.Between(before, after))
                .Concat(renamed.Select(pair => PartNames.ChangeOf(pair.Key, pair.Value)))
                .Concat(PartChanges.Between(inNewNames, after, ranks))
                .Concat(ConductorChanges.Between(inNewNames, after, ranks))
                .OrderBy(change => change.Rank)
                .ThenBy(change => change.Kind)
                .ThenBy(change => change.Sentence, StringComparer.Ordinal),
        ];
    }

    /// <summary>The new identifier of each conductor that has another one, by the old one.</summary>
    public static IReadOnlyDictionary<string, string> RenamedConductors(MachineDesign before, MachineDesign after) =>
        ConductorPairs.Of(PartNames.Applied(before, PartNames.Renamed(before, after)), after).Matched
            .Where(pair => pair.Before.Id != pair.After.Id)
            .ToDictionary(pair => pair.Before.Id, pair => pair.After.Id, StringComparer.Ordinal);

    private static IEnumerable<DesignChange> Title(MachineDesign before, MachineDesign after)
    {
        if (before.Name != after.Name)
            yield return new(ChangeKind.TitleChanged, ChangeRank.Other, [], $"The machine is called {after.Name}, no longer {before.Name}.");
        else if (before.Summary != after.Summary)
            yield return new(ChangeKind.TitleChanged, ChangeRank.Other, [], "The machine's summary is worded otherwise.");
        if (!before.Mistakes.ToHashSet().SetEquals(after.Mistakes))
            yield return new(ChangeKind.MistakesChanged, ChangeRank.Other, [], "Other kinds of mistake are reckoned with, or at other rates.");
        if (before.Mains != after.Mains)
            yield return new(ChangeKind.MainsChanged, ChangeRank.Mains, [], $"The machine is made for {Words(after.Mains)}, not for {Words(before.Mains)}.");
    }

    private static string Words(MainsSupply? mains) => mains is null
        ? "no mains"
        : $"{ChangeWords.Of(mains.Voltage)}, {ChangeWords.Of(mains.Frequency)}, {ChangeWords.Of(mains.Earthing)}";
}
