using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout people take-in</c>: the people of another journal, such as of the file from before the database had them.</summary>
internal static class TakeInCommand
{
    public static ExampleCommand Build(Terminal terminal, SharedOptions options)
    {
        var from = new Option<string?>("--from") { Description = "The journal whose people are taken in, a file or a database; the file in your own data folder when left out.", HelpName = "JOURNAL" };
        var command = new ExampleCommand(
            "take-in",
            "Take in the people of another journal, with passwords, roles and second factors; who is here already stays as they are, and the other journal too.",
            "proveout people take-in --from journal.db --journal postgresql://workshop@server/proveout")
        {
            from, options.Journal, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var source = parse.GetValue(from) ?? Places.Journal;
            await using var other = await AccessPlace.OpenAsync(source, cancellation);
            var book = other.Store.Read();
            if (book.People.Count == 0)
                return terminal.Refuse("no-people", other.Store.Place, "Nobody may sign in there, so nobody was taken in.", "Give the journal whose people are to be taken in with --from.", parse.GetValue(options.Json));
            return await PeopleCommand.AtDeskAsync(options, parse, desk => Show(terminal, desk.TakeIn(book), parse.GetValue(options.Json)), cancellation);
        });
        return command;
    }

    private static int Show(Terminal terminal, TakenIn taken, bool asJson)
    {
        if (asJson)
        {
            terminal.Show(new PeopleShape("proveout-people 1", [.. taken.Added.Select(person => PersonShape.Of(person, 0))]), JsonShapes.Spread.PeopleShape);
            return ExitCode.Fine;
        }

        terminal.Say(taken.Added.Count == 0 ? "Nobody new is there." : $"May sign in here now, as there: {Names(taken.Added)}.");
        if (taken.Known.Count > 0)
            terminal.Say($"Left as they are here: {Names(taken.Known)}.");
        return ExitCode.Fine;
    }

    private static string Names(IReadOnlyList<KnownPerson> people) => string.Join(", ", people.Select(person => $"{person.Name} ({RolePolicy.Word(person.Role)})"));
}
