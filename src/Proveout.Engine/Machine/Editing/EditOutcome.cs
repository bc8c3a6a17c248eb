namespace Proveout.Engine.Machine;

/// <summary>The files after an edit, or why it could not be made.</summary>
internal readonly record struct EditOutcome(EditedFiles? Files, Diagnostic? Problem)
{
    public static EditOutcome Refuse(Diagnostic problem) => new(null, problem);
}
