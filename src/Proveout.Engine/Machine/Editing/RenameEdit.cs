namespace Proveout.Engine.Machine;

/// <summary>Gives a thing another name, wherever it is named.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="NewName">Its new name; nothing of its kind has it yet.</param>
public sealed record RenameEdit(EditedThing Thing, string NewName) : MachineEdit
{
    /// <inheritdoc/>
    public override ValueList<EditedThing> Things => [Thing, Thing with { Name = NewName }];

    /// <inheritdoc/>
    public override string Words => $"{Thing} is now {NewName}";

    internal override EditOutcome ApplyTo(EditedFiles files)
    {
        if (files.Holding(Thing, mayBeNew: false) is null)
            return EditOutcome.Refuse(EditProblems.NotThere(Thing));
        var renamed = Thing with { Name = NewName };
        if (files.Holding(renamed, mayBeNew: false) is { } taken)
            return EditOutcome.Refuse(EditProblems.Taken(renamed, taken.PlaceOf(renamed)));
        foreach (var file in files.All)
        {
            var texts = References.To(Thing, NewName, file.Root);
            if (texts.Count == 0)
                continue;
            if (file.Reword(texts) is not { } changed || files.With(changed).Files is not { } next)
                return EditOutcome.Refuse(EditProblems.NotHere(Thing, file));
            files = next;
        }

        return new(files, null);
    }
}
