using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Runs one command line from its words to its exit code.</summary>
internal static class CommandRun
{
    private static readonly TimeSpan PatienceAfterSignal = TimeSpan.FromSeconds(2);

    /// <summary>Runs a command line. Nothing it meets ends in a stack trace.</summary>
    public static async Task<int> OfAsync(IReadOnlyList<string> words, Terminal terminal)
    {
        var parse = CommandTree.Build(terminal).Parse(words, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        if (parse.Action is ParseErrorAction)
            return RefuseWords(parse, terminal);
        try
        {
            return await parse.InvokeAsync(new InvocationConfiguration
            {
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = MindsSignals(parse) ? null : PatienceAfterSignal,
                Output = terminal.Output,
                Error = terminal.Error,
            });
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
        catch (AccessException refusal)
        {
            terminal.Complain(refusal.Message);
            return ExitCode.BadInput;
        }
        catch (JournalException refusal)
        {
            terminal.Complain(refusal.Message);
            return ExitCode.BadInput;
        }
        catch (Exception exception)
        {
            return Confess(exception, terminal);
        }
    }

    private static bool MindsSignals(ParseResult parse) => parse.CommandResult.Command is RootCommand or ExampleCommand { MindsSignals: true };

    private static int RefuseWords(ParseResult parse, Terminal terminal)
    {
        foreach (var error in parse.Errors)
            terminal.Complain(error.Message);
        terminal.Complain($"`{WordsOf(parse.CommandResult)} --help` shows how it is used, with an example.");
        return ExitCode.BadInput;
    }

    private static string WordsOf(CommandResult command) =>
        command is { Command: not RootCommand, Parent: CommandResult parent } ? $"{WordsOf(parent)} {command.Command.Name}" : "proveout";

    private static int Confess(Exception exception, Terminal terminal)
    {
        terminal.Complain("Proveout met a mistake of its own and stopped; what was entered in a journal before is kept.");
        terminal.Complain(TroubleLog.Write(exception, TimeProvider.System) is { } path
            ? $"The details are in {path}: please send them to whoever looks after the program."
            : "The details could not be written to a file.");
        return ExitCode.Internal;
    }
}
