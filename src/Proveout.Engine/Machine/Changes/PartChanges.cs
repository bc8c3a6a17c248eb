namespace Proveout.Engine.Machine;

/// <summary>What differs between the parts of two designs.</summary>
internal static class PartChanges
{
    public static IEnumerable<DesignChange> Between(MachineDesign before, MachineDesign after, TerminalRanks ranks)
    {
        DesignChange Change(ChangeKind kind, Part part, string sentence)
        {
            var terminals = TerminalsOf(part, before, after);
            return new(kind, ranks.Of(terminals), [part.Designation], sentence) { Terminals = terminals };
        }

        var gone = before.Parts.Where(part => after.FindPart(part.Designation) is null);
        var come = after.Parts.Where(part => before.FindPart(part.Designation) is null);
        return gone.Select(part => Change(ChangeKind.PartRemoved, part, $"{Called(part)} is no longer there."))
            .Concat(come.Select(part => Change(ChangeKind.PartAdded, part, $"{Called(part)} is new: {part.Type.Name}, {ChangeWords.Place(part)}.")))
            .Concat(
                from now in after.Parts
                let old = before.FindPart(now.Designation)
                where old is not null && old != now
                from difference in Differences(old, now)
                select Change(difference.Kind, now, difference.Sentence))
            .Concat(Types(before, after, ranks));
    }

    private static IEnumerable<(ChangeKind Kind, string Sentence)> Differences(Part old, Part now)
    {
        if (old.Name != now.Name)
            yield return (ChangeKind.PartRenamed, $"{now.Designation} is now for: {now.Name}; it was for: {old.Name}.");
        if (old.Type.Id != now.Type.Id)
            yield return (ChangeKind.PartOfOtherType, $"{Called(now)} is now a {now.Type.Name} ({now.Type.Id}), not a {old.Type.Name} ({old.Type.Id}).");
        if (old.Place != now.Place || old.Placement != now.Placement)
            yield return (ChangeKind.PartMoved, $"{Called(now)} is now {WhereNow(old, now)}.");
        if (!Equals((old.OwnSize, old.Reach, old.Slack), (now.OwnSize, now.Reach, now.Slack)))
            yield return (ChangeKind.PartMeasured, $"{Called(now)}: its outline, its reach or the spare length at it is given otherwise.");
        foreach (var sentence in Jumpers(old, now))
            yield return (ChangeKind.JumperChanged, sentence);
        foreach (var sentence in Values(old, now))
            yield return (ChangeKind.ValueChanged, sentence);
    }

    private static string WhereNow(Part old, Part now) =>
        ChangeWords.Place(old) == ChangeWords.Place(now)
            ? $"{now.Place}, not {old.Place}"
            : $"{ChangeWords.Place(now)}, not {ChangeWords.Place(old)}";

    private static IEnumerable<string> Jumpers(Part old, Part now) =>
        from jumper in old.Jumpers.Concat(now.Jumpers).Select(setting => setting.Jumper).Distinct()
        let was = PositionOf(old, jumper)
        let position = PositionOf(now, jumper)
        where was != position
        select (was, position) switch
        {
            (null, _) => $"Jumper {jumper} of {now.Designation} is now fitted, at {position}.",
            (_, null) => $"Jumper {jumper} of {now.Designation} is no longer fitted; it was at {was}.",
            _ => $"Jumper {jumper} of {now.Designation} is now at {position}, not at {was}.",
        };

    private static IEnumerable<string> Values(Part old, Part now) =>
        from element in old.Values.Concat(now.Values).Select(value => value.Element).Distinct()
        let was = ValueOf(old, element)
        let value = ValueOf(now, element)
        where was != value
        select $"{element} of {now.Designation} is now {(value is null ? "as its type says" : BandText.Write(value.Value))}, not {(was is null ? "as its type says" : BandText.Write(was.Value))}.";

    // A type that is described otherwise is one change, whatever the number of parts.
    private static IEnumerable<DesignChange> Types(MachineDesign before, MachineDesign after, TerminalRanks ranks) =>
        from now in after.Parts
        let old = before.FindPart(now.Designation)
        where old is not null && old.Type.Id == now.Type.Id && old.Type != now.Type
        group now by now.Type.Id into parts
        let terminals = parts.SelectMany(part => TerminalsOf(part, before, after)).ToValueList()
        select new DesignChange(
            ChangeKind.TypeDescribedAnew,
            ranks.Of(terminals),
            parts.Select(part => part.Designation).ToValueList(),
            $"Part type {parts.Key} is described otherwise; it is that of {string.Join(", ", parts.Select(part => part.Designation))}.")
        {
            Terminals = terminals,
        };

    private static ValueList<TerminalReference> TerminalsOf(Part part, MachineDesign before, MachineDesign after) =>
        before.Conductors.Concat(after.Conductors)
            .SelectMany(conductor => new[] { conductor.From, conductor.To })
            .Where(terminal => terminal.Part == part.Designation)
            .Distinct()
            .ToValueList();

    private static string Called(Part part) => $"{part.Designation} ({part.Name})";

    private static string? PositionOf(Part part, string jumper) => part.Jumpers.FirstOrDefault(setting => setting.Jumper == jumper)?.Position;

    private static ResistanceBand? ValueOf(Part part, string element) => part.Values.FirstOrDefault(value => value.Element == element)?.Value;
}
