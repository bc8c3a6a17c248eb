using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Why the bench refuses what was entered.</summary>
internal static class Refusals
{
    public static Diagnostic NoSuchBuild(string buildId) =>
        Of("no-such-build", $"There is no build {Quote.Of(buildId)}.", "Go back to the list of builds and choose one.");

    public static Diagnostic NoSuchMachine(string machineId) =>
        Of("no-such-machine", $"There is no machine {Quote.Of(machineId)}.", "Choose one of the machines on the front page.");

    public static Diagnostic NoSuchPart(string designation) =>
        Of("no-such-part", $"This machine has no part {Quote.Of(designation)}.", "Choose one from its list of parts.");

    public static Diagnostic NoSuchCheck(string checkId) =>
        Of("no-such-check", $"This machine has no check {Quote.Of(checkId)}.", "Choose one from the list of checks.");

    public static Diagnostic NoSuchMistake(string faultId) =>
        Of("no-such-mistake", $"No mistake of this machine is called {Quote.Of(faultId)}.", "Choose one of the suspects, or one from the machine's list of mistakes.");

    public static Diagnostic NoSuchDeviation() =>
        Of("no-such-deviation", "No other build has noted this.", "Load the page of the check again, and answer one of the notes that stand there.");

    public static Diagnostic UnreadableReading(string text, string unit) =>
        Of("unreadable-reading", $"{Quote.Of(text)} is not a reading.", ReadingText.HelpFor(unit));

    public static Diagnostic NotSeen(string person, string? reading) => Of(
        "not-seen",
        $"Meanwhile {person} {(reading is null ? "left this check out" : $"entered {reading} at this check")}, so yours was not entered over it.",
        "Look at what stands there now; enter yours again if it corrects that.");

    public static Diagnostic Empty(string what, string mend) => Of("empty", $"{what} is empty.", mend);

    public static Diagnostic NoPicture() =>
        Of("no-picture", "This file is neither a JPEG nor a PNG picture.", "Choose a photograph saved as JPEG or PNG.");

    public static Diagnostic OwnEntries(string person) => Of(
        "own-entries", $"{person} made entries in this record, so {person} cannot sign it off as its checker.", "A checker is a second person, who entered nothing here. Sign as the builder, or ask someone else to check.");

    public static Diagnostic BrokenPicture() =>
        Of("broken-picture", "This picture is cut short or broken, so its notes on place and time cannot be taken out.", "Save it anew, or take it again.");

    public static Diagnostic Journal(string sentence) => Of("journal", sentence, "");

    private static Diagnostic Of(string rule, string message, string mend) => new(rule, new SourcePlace("bench", 0, 0), message, mend);
}
