namespace Proveout.Engine.Machine;

/// <summary>Gives one field of a thing another value, or takes it out.</summary>
/// <param name="Thing">The thing; it is there already.</param>
/// <param name="Path">Keys from the thing to the field; none when the thing itself is the field.</param>
/// <param name="Value">The value; null takes the field out.</param>
public sealed record FieldEdit(EditedThing Thing, ValueList<string> Path, EditedValue? Value) : MachineEdit
{
    /// <inheritdoc/>
    public override ValueList<EditedThing> Things => [Thing];

    /// <inheritdoc/>
    public override string Words => $"{Thing}: {(Path.Count > 0 ? string.Join(' ', Path) : "value")} {(Value is null ? "taken out" : "changed")}";

    internal override EditOutcome ApplyTo(EditedFiles files)
    {
        if (files.Holding(Thing, mayBeNew: Thing.Section == EditedThing.Head) is not { } file)
            return EditOutcome.Refuse(EditProblems.NotThere(Thing));
        return file.Set([Thing.Section, Thing.Name, .. Path], Value?.ToNode()) is { } changed ? files.With(changed) : EditOutcome.Refuse(EditProblems.NotHere(Thing, file));
    }
}
