using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Why a change of a machine is refused.</summary>
internal static class EditRefusals
{
    public static Diagnostic Sample() =>
        Of("not-your-own", "This machine came with the program and stays as it is.", "Make it your own first: a copy that you can change.");

    public static Diagnostic Unwritable(string path) =>
        new("unwritable-file", new SourcePlace(path, 0, 0), "The machine's files cannot be written.", "See that the folder may be written and has room, or make the machine your own: a copy elsewhere.");

    public static Diagnostic Unreadable(string path) =>
        new("unreadable-file", new SourcePlace(path, 0, 0), "The machine's files cannot be read any more.", "See that they are still there, and look at the list of revisions.");

    public static Diagnostic ChangedMeanwhile(SavedRevision? by) => Of(
        "changed-meanwhile",
        by is null ? "The machine was changed meanwhile." : $"{(by.Person.Length > 0 ? by.Person : "Somebody")} saved meanwhile: {by.What}.",
        "Look at the page again, and decide then.");

    public static Diagnostic SameLines() => Of(
        "same-lines",
        "Somebody saved meanwhile, and changed lines beside yours, so that the two texts cannot be put together without a look.",
        "Your text is kept as a draft. Compare it with the machine's text as it is now, and save it again.");

    public static Diagnostic NothingLeft(string what) => Of($"nothing-to-{what}", $"There is nothing left to {what}.", "");

    public static Diagnostic NoSuchFile(string file) => Of("no-such-file", $"The machine has no file {Quote.Of(file)}.", "Choose one of its files.");

    public static Diagnostic NoName() => Of("empty", "The machine has no name.", "Say what people call it; letters and digits make up its address.");

    private static Diagnostic Of(string rule, string message, string mend) => new(rule, new SourcePlace("editor", 0, 0), message, mend);
}
