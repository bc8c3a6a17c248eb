namespace Proveout.Engine.Machine;

/// <summary>Adds a thing behind the last of its kind.</summary>
/// <param name="Thing">The thing; none has its name yet.</param>
/// <param name="Fields">Its fields, in the order in which they are written.</param>
public sealed record AddEdit(EditedThing Thing, ValueList<EditedField> Fields) : MachineEdit
{
    /// <inheritdoc/>
    public override ValueList<EditedThing> Things => [Thing];

    /// <inheritdoc/>
    public override string Words => $"{Thing} added";

    internal override EditOutcome ApplyTo(EditedFiles files)
    {
        if (files.Holding(Thing, mayBeNew: false) is { } taken)
            return EditOutcome.Refuse(EditProblems.Taken(Thing, taken.PlaceOf(Thing)));
        if (files.ForNew(Thing, Neighbour) is not { } file)
            return EditOutcome.Refuse(EditProblems.NoFile());
        var body = new MappingNode(default, [.. Fields.Select(NodeOf)]);
        return file.Set([Thing.Section, Thing.Name], body) is { } changed ? files.With(changed) : EditOutcome.Refuse(EditProblems.NotHere(Thing, file));
    }

    // A conductor goes into the file of the part that it starts from, where a machine is spread over several.
    private string Neighbour =>
        Fields.FirstOrDefault(given => given.Key == "from")?.Value.ToNode() is ScalarNode { Text: var from } && TerminalReference.TryParse(from) is { } end ? end.Part : "";

    private static Node NodeOf(EditedField field)
    {
        var node = field.Value.ToNode();
        node.Key = new ScalarNode(default, field.Key, plain: false);
        return node;
    }
}
