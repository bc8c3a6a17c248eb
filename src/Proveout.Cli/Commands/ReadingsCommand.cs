using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout readings MACHINE</c>.</summary>
internal static class ReadingsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand("readings", "Show what a meter should read at each check of the plan.", "proveout readings samples/alderbrook")
        {
            options.Machine, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var read = options.FilesOf(parse).Read(options.MachineOf(parse));
            if (read.Value is not { } machine)
                return terminal.Refuse(read.Diagnostics, asJson);
            Show(terminal, await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation), asJson);
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Show(Terminal terminal, PlannedMachine planned, bool asJson)
    {
        CheckShape[] checks = [.. planned.Plan.Checks.Select(check => CheckShape.Of(planned.Explained(check)))];
        if (asJson)
        {
            terminal.Show(new CheckTableShape("proveout-check-table 1", planned.Machine.Design.Name, checks), JsonShapes.Spread.CheckTableShape);
            return;
        }

        var sheet = new Sheet("Set-up", "Red lead", "Black lead", "Should read", "Why", "Check");
        foreach (var check in checks)
            sheet.Add(check.SetUp, check.Red, check.Black, check.ExpectedWords, check.Why, check.Id);
        terminal.Show(sheet);
    }
}
