namespace Proveout.Engine.Machine;

/// <summary>Why an edit cannot be made.</summary>
internal static class EditProblems
{
    public static Diagnostic NotThere(EditedThing thing) =>
        new("edited-thing-gone", new("", 0, 0), $"There is no {Quote.Of(thing.ToString())} in the machine's files.", "Somebody may have renamed it or taken it out: look at the list again.");

    public static Diagnostic Taken(EditedThing thing, SourcePlace place) =>
        new("duplicate-name", place, $"There is a {Quote.Of(thing.ToString())} already.", "Give it another name.");

    public static Diagnostic NoFile() =>
        new("no-file", new("", 0, 0), "There is no machine file to write into.", "Begin a machine file first.");

    public static Diagnostic NotHere(EditedThing thing, EditedFile file) =>
        new(
            "written-unusually",
            file.PlaceOf(thing),
            $"{Quote.Of(thing.ToString())} is written in a way that cannot be changed piece by piece without touching what stands around it.",
            "Change it in the text of the file.");
}
