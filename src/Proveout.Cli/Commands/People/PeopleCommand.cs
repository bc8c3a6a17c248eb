using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout people</c>: who may come in when the bench is open to a network.</summary>
internal static class PeopleCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "people",
            "Say who may sign in at a bench that is open to a network; on the bench's own computer.",
            "proveout people add \"Mara Lindt\" --role builder",
            "proveout people join \"Tove Lund\" --role checker --at https://bench.local:8015/",
            "proveout people list")
        {
            Add(terminal, options), List(terminal, options), SetRole(terminal, options), SetPassword(terminal, options), Remove(terminal, options), JoinCommand.Build(terminal, options), SecondFactorCommands.Off(terminal, options), SecondFactorCommands.Notes(terminal, options), TakeInCommand.Build(terminal, options),
        };
        return command;
    }

    /// <summary>Works at the desk of the journal that was asked for.</summary>
    public static async Task<int> AtDeskAsync(SharedOptions options, ParseResult parse, Func<PeopleDesk, int> work, CancellationToken cancellation)
    {
        await using var place = await AccessPlace.OpenAsync(options.JournalOf(parse), cancellation);
        return work(new PeopleDesk(place.Store, TimeProvider.System));
    }

    private static ExampleCommand Add(Terminal terminal, SharedOptions options)
    {
        var (name, role) = (PeopleWords.Name(), PeopleWords.Role(isRequired: true));
        var command = new ExampleCommand("add", "Add a person, who then signs in with a password; it is asked for.", "proveout people add \"Mara Lindt\" --role builder") { name, role, options.Journal, options.Json };
        command.SetAction(async (parse, cancellation) => await PasswordPrompt.AskTwiceAsync(terminal, cancellation) is { } password
            ? await AtDeskAsync(
                options, parse, desk => Show(terminal, desk.Add(parse.GetValue(name)!, PeopleWords.RoleOf(parse.GetValue(role)!), password), person => $"{person.Name} may sign in as a {RolePolicy.Word(person.Role)}.", parse.GetValue(options.Json)), cancellation)
            : PasswordPrompt.Refuse(terminal, parse.GetValue(options.Json)));
        return command;
    }

    private static ExampleCommand List(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand("list", "List who may sign in.", "proveout people list") { options.Journal, options.Json };
        command.SetAction((parse, cancellation) => AtDeskAsync(options, parse, desk => ShowAll(terminal, desk.List(), parse.GetValue(options.Json)), cancellation));
        return command;
    }

    private static ExampleCommand SetRole(Terminal terminal, SharedOptions options)
    {
        var (name, role) = (PeopleWords.Name(), PeopleWords.RoleWord());
        var command = new ExampleCommand("role", "Give a person another role, from the next page on.", "proveout people role \"Tove Lund\" checker") { name, role, options.Journal, options.Json };
        command.SetAction((parse, cancellation) => AtDeskAsync(
            options, parse, desk => Show(terminal, desk.SetRole(parse.GetValue(name)!, PeopleWords.RoleOf(parse.GetValue(role)!)), person => $"{person.Name} is a {RolePolicy.Word(person.Role)} now.", parse.GetValue(options.Json)), cancellation));
        return command;
    }

    private static ExampleCommand SetPassword(Terminal terminal, SharedOptions options)
    {
        var name = PeopleWords.Name();
        var command = new ExampleCommand("password", "Give a person another password, and sign the person out everywhere.", "proveout people password \"Mara Lindt\"") { name, options.Journal, options.Json };
        command.SetAction(async (parse, cancellation) => await PasswordPrompt.AskTwiceAsync(terminal, cancellation) is { } password
            ? await AtDeskAsync(options, parse, desk => Show(terminal, desk.SetPassword(parse.GetValue(name)!, password), person => $"{person.Name} has another password, and is signed out everywhere.", parse.GetValue(options.Json)), cancellation)
            : PasswordPrompt.Refuse(terminal, parse.GetValue(options.Json)));
        return command;
    }

    private static ExampleCommand Remove(Terminal terminal, SharedOptions options)
    {
        var name = PeopleWords.Name();
        var command = new ExampleCommand("remove", "Take a person out, at once and on every device; what the person entered stays.", "proveout people remove \"Tove Lund\"") { name, options.Journal, options.Json };
        command.SetAction((parse, cancellation) => AtDeskAsync(
            options, parse, desk => Show(terminal, desk.Remove(parse.GetValue(name)!), person => $"{person.Name} is out, on every device.", parse.GetValue(options.Json)), cancellation));
        return command;
    }

    internal static int Show(Terminal terminal, Outcome<KnownPerson> outcome, Func<KnownPerson, string> sentence, bool asJson)
    {
        if (outcome.Value is not { } person)
            return terminal.Refuse(outcome.Diagnostics, asJson);
        if (asJson)
            terminal.Show(new PeopleShape("proveout-people 1", [PersonShape.Of(person, 0)]), JsonShapes.Spread.PeopleShape);
        else
            terminal.Say(sentence(person));
        return ExitCode.Fine;
    }

    private static int ShowAll(Terminal terminal, IReadOnlyList<(KnownPerson Person, int Devices)> people, bool asJson)
    {
        if (asJson)
            terminal.Show(new PeopleShape("proveout-people 1", [.. people.Select(one => PersonShape.Of(one.Person, one.Devices))]), JsonShapes.Spread.PeopleShape);
        else if (people.Count == 0)
            terminal.Say("Nobody yet. `proveout people add NAME --role builder` adds someone.");
        else
            ShowTable(terminal, people);
        return ExitCode.Fine;
    }

    private static void ShowTable(Terminal terminal, IReadOnlyList<(KnownPerson Person, int Devices)> people)
    {
        var sheet = new Sheet("Name", "Role", "Signs in by", "Second factor", "Devices signed in");
        foreach (var (person, devices) in people)
            sheet.Add(person.Name, RolePolicy.Word(person.Role), person.Password.Length > 0 ? "password or join code" : "join code", person.Second is { IsOn: true } ? "yes" : "no", $"{devices}");
        terminal.Show(sheet);
    }
}
