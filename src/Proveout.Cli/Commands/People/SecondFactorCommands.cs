using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout people second-factor-off</c> and <c>access-notes</c>: for whoever runs the bench, when somebody lost an authenticator.</summary>
internal static class SecondFactorCommands
{
    public static ExampleCommand Off(Terminal terminal, SharedOptions options)
    {
        var name = PeopleWords.Name();
        var command = new ExampleCommand(
            "second-factor-off", "Take the second factor of a person off who lost it, and sign the person out everywhere; see first that it is the person who asks.", "proveout people second-factor-off \"Mara Lindt\"")
        {
            name, options.Journal, options.Json,
        };
        command.SetAction((parse, cancellation) => PeopleCommand.AtDeskAsync(options, parse, desk => PeopleCommand.Show(
            terminal,
            desk.TakeSecondFactorOff(parse.GetValue(name)!),
            person => $"{person.Name} has no second factor any more, and is signed out everywhere. It stands in the record: `proveout people access-notes`.",
            parse.GetValue(options.Json)), cancellation));
        return command;
    }

    public static ExampleCommand Notes(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand("access-notes", "List what was done to second factors, the last first.", "proveout people access-notes") { options.Journal, options.Json };
        command.SetAction((parse, cancellation) => PeopleCommand.AtDeskAsync(options, parse, desk => Show(terminal, desk.Notes(), parse.GetValue(options.Json)), cancellation));
        return command;
    }

    private static int Show(Terminal terminal, IReadOnlyList<AccessNote> notes, bool asJson)
    {
        if (asJson)
            terminal.Show(new AccessNotesShape("proveout-access-notes 1", [.. notes.Select(AccessNoteShape.Of)]), JsonShapes.Spread.AccessNotesShape);
        else if (notes.Count == 0)
            terminal.Say("Nothing yet.");
        else
            ShowTable(terminal, notes);
        return ExitCode.Fine;
    }

    private static void ShowTable(Terminal terminal, IReadOnlyList<AccessNote> notes)
    {
        var sheet = new Sheet("When, universal time", "Name", "Second factor");
        foreach (var note in notes)
            sheet.Add($"{note.When.UtcDateTime:yyyy-MM-dd HH:mm}", note.Name, AccessEventWords.Of(note.Event));
        terminal.Show(sheet);
    }
}
