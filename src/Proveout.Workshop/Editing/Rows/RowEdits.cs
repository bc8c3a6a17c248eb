using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What a row that was typed changes.</summary>
public static class RowEdits
{
    /// <summary>The edits that make a row what was typed; none when nothing differs.</summary>
    /// <param name="files">The machine's files as the person saw them.</param>
    /// <param name="section">The section.</param>
    /// <param name="row">Name of the row; empty for a new one.</param>
    /// <param name="name">The name that was typed.</param>
    /// <param name="typed">What was typed in a field; null when the field was not asked for.</param>
    public static IReadOnlyList<MachineEdit> Of(IReadOnlyList<SourceText> files, string section, string row, string name, Func<RowField, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var given = RowFields.Of(section).Select(field => (Field: field, Text: typed(field)?.Trim())).Where(pair => pair.Text is not null).ToArray();
        if (section == EditedThing.Head)
            return [.. given.Select(pair => HeadEdit(files, pair.Field, pair.Text!)).OfType<MachineEdit>()];
        var thing = new EditedThing(section, row.Length > 0 ? row : name.Trim());
        if (row.Length == 0)
            return Added(thing, given!);
        var before = FieldTexts.Of(files, thing);
        List<MachineEdit> edits =
        [
            .. from pair in given
               where pair.Text != Shown(pair.Field, before)
               select new FieldEdit(thing, Keys(pair.Field), ValueOf(pair.Field, pair.Text!)),
        ];
        if (name.Trim() is { Length: > 0 } newName && newName != row)
            edits.Add(new RenameEdit(thing, newName));
        return edits;
    }

    /// <summary>The edits that take a row out; of a part, with the conductors that land on it when asked.</summary>
    public static IReadOnlyList<MachineEdit> Removal(MachineDesign design, EditedThing thing, bool withConductors)
    {
        ArgumentNullException.ThrowIfNull(design);
        return
        [
            .. withConductors && thing.Section == EditedThing.Parts
                ? design.Conductors.Where(conductor => conductor.From.Part == thing.Name || conductor.To.Part == thing.Name).Select(conductor => new RemoveEdit(new(EditedThing.Conductors, conductor.Id)))
                : [],
            new RemoveEdit(thing),
        ];
    }

    /// <summary>The edits that put the jumpers of a part where they were chosen.</summary>
    /// <param name="part">The part.</param>
    /// <param name="chosen">The position chosen for a jumper, by its number; empty when it is not fitted, null when it was not asked for.</param>
    public static IReadOnlyList<MachineEdit> Jumpers(Part part, Func<int, string?> chosen)
    {
        ArgumentNullException.ThrowIfNull(part);
        return
        [
            .. from jumper in part.Type.Jumpers.Select((jumper, at) => (jumper.Name, Position: chosen(at)))
               where jumper.Position is not null && jumper.Position != (part.Jumpers.FirstOrDefault(setting => setting.Jumper == jumper.Name)?.Position ?? "")
               select new FieldEdit(new(EditedThing.Parts, part.Designation), ["jumpers", jumper.Name], jumper.Position.Length == 0 ? null : EditedValue.Of(jumper.Position)),
        ];
    }

    /// <summary>What a field of a row says before it is changed.</summary>
    public static string Shown(RowField field, IReadOnlyDictionary<string, string> texts)
    {
        ArgumentNullException.ThrowIfNull(field);
        return texts.GetValueOrDefault(field.Path, "");
    }

    private static IReadOnlyList<MachineEdit> Added(EditedThing thing, (RowField Field, string Text)[] given)
    {
        var typed = given.Where(pair => pair.Text.Length > 0).ToArray();
        return
        [
            new AddEdit(thing, [.. typed.Where(pair => Keys(pair.Field).Count == 1).Select(pair => new EditedField(pair.Field.Path, ValueOf(pair.Field, pair.Text)!))]),
            .. typed.Where(pair => Keys(pair.Field).Count > 1).Select(pair => new FieldEdit(thing, Keys(pair.Field), ValueOf(pair.Field, pair.Text))),
        ];
    }

    private static FieldEdit? HeadEdit(IReadOnlyList<SourceText> files, RowField field, string text)
    {
        var thing = new EditedThing(EditedThing.Head, Keys(field)[0]);
        var before = FieldTexts.Of(files, thing).GetValueOrDefault(string.Join(' ', Keys(field).Skip(1)), "");
        return before == text ? null : new FieldEdit(thing, [.. Keys(field).Skip(1)], ValueOf(field, text));
    }

    private static ValueList<string> Keys(RowField field) => [.. field.Path.Split(' ')];

    private static EditedValue? ValueOf(RowField field, string text) => text.Length == 0 ? null : field.Kind switch
    {
        RowValue.List => EditedValue.Of([.. text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]),
        RowValue.Flag when text is "true" or "false" => EditedValue.Of(text == "true"),
        _ => EditedValue.Of(text),
    };
}
