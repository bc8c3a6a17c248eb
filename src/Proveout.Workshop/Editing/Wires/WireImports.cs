using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads wire lists against a machine.</summary>
/// <param name="files">Reads machines.</param>
public sealed class WireImports(MachineFiles files)
{
    private const int MostProblems = 30;

    /// <summary>What a list would change, or every row that cannot be used, by its line.</summary>
    /// <param name="machine">The machine's files.</param>
    /// <param name="path">Where the machine lies.</param>
    /// <param name="list">The list.</param>
    /// <param name="removeUnlisted">True when conductors that are not in the list go.</param>
    public Outcome<WireImport> Of(IReadOnlyList<SourceText> machine, string path, NamedText list, bool removeUnlisted)
    {
        ArgumentNullException.ThrowIfNull(list);
        var read = WireRows.Read(list);
        if (read.Value is not { } rows)
            return Outcome.Refused<WireImport>(read.Diagnostics);
        var before = FieldTexts.OfSection(machine, EditedThing.Conductors).ToDictionary(conductor => conductor.Name, conductor => conductor.Texts, StringComparer.Ordinal);
        var edits = rows.Select(row => (row.Name, Edits: EditsOf(row, before.GetValueOrDefault(row.Name)))).ToArray();
        string[] unlisted = [.. before.Keys.Except(rows.Select(row => row.Name), StringComparer.Ordinal)];
        IReadOnlyList<MachineEdit> all =
        [
            .. edits.SelectMany(row => row.Edits),
            .. removeUnlisted ? unlisted.Select(name => new RemoveEdit(new(EditedThing.Conductors, name))) : [],
        ];
        var applied = MachineText.Apply(machine, all);
        if (applied.Value is not { } texts)
            return Outcome.Refused<WireImport>(applied.Diagnostics);
        if (files.Read(texts, path) is var after && after.Value is null)
            return Outcome.Refused<WireImport>([.. after.Diagnostics.Take(MostProblems).Select(problem => InList(problem, texts, rows, list.Name))]);
        return Outcome.Of(new WireImport(
            all,
            [.. edits.Where(row => row.Edits.Count > 0 && before.ContainsKey(row.Name)).Select(row => row.Name)],
            [.. edits.Where(row => !before.ContainsKey(row.Name)).Select(row => row.Name)],
            removeUnlisted ? unlisted : [],
            removeUnlisted ? [] : unlisted,
            files.Read(machine, path).Value is { } was ? DesignChanges.Between(was.Design, after.Value!.Design) : []));
    }

    private static IReadOnlyList<MachineEdit> EditsOf(WireRow row, IReadOnlyDictionary<string, string>? before)
    {
        var thing = new EditedThing(EditedThing.Conductors, row.Name);
        return before is null
            ? [new AddEdit(thing, [.. row.Texts.Where(text => text.Text.Length > 0).Select(text => new EditedField(text.Field.Path, ValueOf(text.Field, text.Text)!))])]
            : [.. row.Texts.Where(text => text.Text != before.GetValueOrDefault(text.Field.Path, "")).Select(text => new FieldEdit(thing, [text.Field.Path], ValueOf(text.Field, text.Text)))];
    }

    private static EditedValue? ValueOf(RowField field, string text) => text.Length == 0 ? null : field.Kind switch
    {
        RowValue.List => EditedValue.Of([.. text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]),
        RowValue.Flag when text is "true" or "false" => EditedValue.Of(text == "true"),
        _ => EditedValue.Of(text),
    };

    // What the reader says of a conductor in the file is about a row of the list.
    private static Diagnostic InList(Diagnostic problem, IReadOnlyList<SourceText> texts, IReadOnlyList<WireRow> rows, string list) =>
        ThingPlaces.At(texts, problem.Place) is { Section: EditedThing.Conductors } thing && rows.FirstOrDefault(row => row.Name == thing.Name) is { } row
            ? problem with { Place = new(list, row.Line, 1) }
            : problem;
}
