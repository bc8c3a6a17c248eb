using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout health</c>.</summary>
internal static class HealthCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var port = new Option<int>("--port") { Description = "The port that the bench is served on.", HelpName = "N", Required = true };
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 1 or > 65535)
                result.AddError($"`{number}` is not a port. Give a number from 1 to 65535.");
        });
        var command = new ExampleCommand("health", "Ask the bench that is served on this computer whether it can take what is entered.", "proveout health --port 8015")
        {
            port, options.Json,
        };
        command.SetAction(async (parse, cancellation) => Show(terminal, await BenchAsking.AskAsync(parse.GetValue(port), cancellation), parse.GetValue(options.Json)));
        return command;
    }

    private static int Show(Terminal terminal, BenchHealth health, bool asJson)
    {
        if (asJson)
            terminal.Output.WriteLine(HealthText.Write(health));
        else
            foreach (var finding in health.Findings)
                terminal.Say($"{finding.Sentence} {finding.Mend}".TrimEnd(), finding.IsGood ? Meaning.Good : Meaning.Bad);
        return health.IsReady ? ExitCode.Fine : ExitCode.Findings;
    }
}
