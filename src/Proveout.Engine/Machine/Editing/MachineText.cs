namespace Proveout.Engine.Machine;

/// <summary>Changes the text of machine files, and says what differs between two texts.</summary>
public static class MachineText
{
    /// <summary>The files after some edits, made one after the other; or why the first that cannot be made cannot.</summary>
    /// <remarks>The result is text: whether it is a machine is for <see cref="MachineReader"/> to say.</remarks>
    public static Outcome<IReadOnlyList<SourceText>> Apply(IReadOnlyList<SourceText> files, IReadOnlyList<MachineEdit> edits)
    {
        var read = EditedFiles.Read(files);
        if (read.Value is not { } edited)
            return Outcome.Refused<IReadOnlyList<SourceText>>(read.Diagnostics);
        foreach (var edit in edits)
        {
            var outcome = edit.ApplyTo(edited);
            if (outcome.Files is not { } next)
                return Outcome.Refused<IReadOnlyList<SourceText>>([outcome.Problem!]);
            edited = next;
        }

        return Outcome.Of<IReadOnlyList<SourceText>>([.. edited.All.Select(file => file.Source)]);
    }

    /// <summary>The things that two texts of a machine give otherwise; refused when either cannot be read.</summary>
    public static Outcome<IReadOnlySet<EditedThing>> Touched(IReadOnlyList<SourceText> before, IReadOnlyList<SourceText> after)
    {
        var (old, changed) = (EditedFiles.Read(before), EditedFiles.Read(after));
        return old.Value is null || changed.Value is null
            ? Outcome.Refused<IReadOnlySet<EditedThing>>([.. old.Diagnostics, .. changed.Diagnostics])
            : Outcome.Of<IReadOnlySet<EditedThing>>(Differing(ThingsOf(old.Value), ThingsOf(changed.Value)));
    }

    /// <summary>What a thing says in a text, on one line; empty when it is not there or the text cannot be read.</summary>
    public static string WordsOf(IReadOnlyList<SourceText> files, EditedThing thing) =>
        EditedFiles.Read(files).Value is { } read ? ThingsOf(read).GetValueOrDefault(thing, "") : "";

    /// <summary>One text with what two people changed in it at the same time; null when both changed the same thing, or the same lines.</summary>
    /// <param name="common">What both began with.</param>
    /// <param name="mine">What one made of it.</param>
    /// <param name="theirs">What the other made of it.</param>
    public static IReadOnlyList<SourceText>? Merge(IReadOnlyList<SourceText> common, IReadOnlyList<SourceText> mine, IReadOnlyList<SourceText> theirs)
    {
        if (Touched(common, mine).Value is not { } byMe || Touched(common, theirs).Value is not { } byThem || byMe.Overlaps(byThem))
            return null;
        if (!SameNames(common, mine) || !SameNames(common, theirs))
            return null;
        var texts = common.Select((file, at) => LineMerge.Of(file.Text, mine[at].Text, theirs[at].Text)).ToArray();
        if (texts.Contains(null))
            return null;
        IReadOnlyList<SourceText> merged = [.. common.Select((file, at) => file with { Text = texts[at]! })];
        // Lines know nothing of what they say: what comes out must hold both changes, and no third.
        return Touched(mine, merged).Value is { } fromMine && fromMine.SetEquals(byThem) && Touched(theirs, merged).Value is { } fromTheirs && fromTheirs.SetEquals(byMe)
            ? merged
            : null;
    }

    private static bool SameNames(IReadOnlyList<SourceText> left, IReadOnlyList<SourceText> right) =>
        left.Select(file => file.File).SequenceEqual(right.Select(file => file.File), StringComparer.Ordinal);

    private static HashSet<EditedThing> Differing(Dictionary<EditedThing, string> before, Dictionary<EditedThing, string> after) =>
        [.. before.Keys.Union(after.Keys).Where(thing => before.GetValueOrDefault(thing) != after.GetValueOrDefault(thing))];

    private static Dictionary<EditedThing, string> ThingsOf(EditedFiles files)
    {
        var things = new Dictionary<EditedThing, string>();
        foreach (var section in files.All.SelectMany(file => file.Root.Entries))
            if (section is MappingNode named)
                foreach (var entry in named.Entries)
                    Add(new(section.Name, entry.Name), entry);
            else
                Add(new(section.Name, ""), section);
        return things;

        // A name may stand twice in a text with errors: both count.
        void Add(EditedThing thing, Node node) => things[thing] = things.GetValueOrDefault(thing, "") + NodeWriter.OnOneLine(node);
    }
}
