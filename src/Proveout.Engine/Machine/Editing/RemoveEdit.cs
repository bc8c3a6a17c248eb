namespace Proveout.Engine.Machine;

/// <summary>Takes a thing out.</summary>
/// <param name="Thing">The thing.</param>
public sealed record RemoveEdit(EditedThing Thing) : MachineEdit
{
    /// <inheritdoc/>
    public override ValueList<EditedThing> Things => [Thing];

    /// <inheritdoc/>
    public override string Words => $"{Thing} taken out";

    internal override EditOutcome ApplyTo(EditedFiles files)
    {
        if (files.Holding(Thing, mayBeNew: false) is not { } file)
            return EditOutcome.Refuse(EditProblems.NotThere(Thing));
        return file.Set([Thing.Section, Thing.Name], null) is { } changed ? files.With(changed) : EditOutcome.Refuse(EditProblems.NotHere(Thing, file));
    }
}
