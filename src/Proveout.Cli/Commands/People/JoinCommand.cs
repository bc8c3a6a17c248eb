using System.CommandLine;
using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout people join NAME</c>: a code that lets a phone in.</summary>
internal static class JoinCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var (name, role) = (PeopleWords.Name(), PeopleWords.Role(isRequired: false));
        var devices = new Option<int>("--devices") { Description = $"How many devices it lets in, 1 to {PeopleDesk.MostDevices}; 1 when left out.", HelpName = "N", DefaultValueFactory = _ => 1 };
        devices.Validators.Add(result =>
        {
            if (result.Tokens is [var token] && int.TryParse(token.Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) && number is < 1 or > PeopleDesk.MostDevices)
                result.AddError($"`{number}` is too few or too many devices. Give a number from 1 to {PeopleDesk.MostDevices}.");
        });
        var at = new Option<string?>("--at") { Description = "Address of the bench, as `proveout serve` showed it; a square code for the camera is shown then.", HelpName = "URL" };
        at.Validators.Add(result =>
        {
            if (result.Tokens is [var token] && JoinAddress.Of(token.Value, "") is null)
                result.AddError($"`{token.Value}` is not an address of a bench. Give one such as https://bench.local:8015/.");
        });
        var command = new ExampleCommand(
            "join",
            "Show a code that lets a device of a person in for ten minutes; a new name needs a role and gets no password.",
            "proveout people join \"Tove Lund\" --role checker --at https://bench.local:8015/")
        {
            name, role, devices, at, options.Journal, options.Json,
        };
        command.SetAction((parse, cancellation) => PeopleCommand.AtDeskAsync(options, parse, desk =>
        {
            var asJson = parse.GetValue(options.Json);
            var given = parse.GetValue(role) is { } word ? PeopleWords.RoleOf(word) : (AccessRole?)null;
            var invited = desk.Invite(parse.GetValue(name)!, given, parse.GetValue(devices));
            if (invited.Value is not { } code)
                return terminal.Refuse(invited.Diagnostics, asJson);
            var address = parse.GetValue(at) is { } bench ? JoinAddress.Of(bench, code) : null;
            if (asJson)
                terminal.Show(new JoinShape("proveout-join 1", code, address, (int)SessionTimes.JoinCode.TotalSeconds, parse.GetValue(devices)), JsonShapes.Spread.JoinShape);
            else
                Show(terminal, code, address, parse.GetValue(devices));
            return ExitCode.Fine;
        }, cancellation));
        return command;
    }

    private static void Show(Terminal terminal, string code, string? address, int devices)
    {
        terminal.Say($"Code: {code}");
        terminal.Say($"It opens the bench for ten minutes, for {(devices == 1 ? "one device" : $"{devices} devices")}. Type it at \"Join with a code\".");
        if (address is null)
            return;
        terminal.Say(address);
        foreach (var line in JoinAddress.SquareLines(address))
            terminal.Say(line);
    }
}
