using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout describe</c>.</summary>
internal static class DescribeCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var name = new Option<string?>($"--{StartQuestions.Name}") { Description = "What the machine is called.", HelpName = "NAME" };
        var answers = new Option<string?>("--answers") { Description = "A file of answers, a line each, such as `motors: 4`; options given besides count more.", HelpName = "FILE" };
        var target = new Option<string?>("--out") { Description = "Machine file to write; it is shown when left out.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "describe",
            "Write a machine file with typical wiring of what you know of a machine: mains, plate, hot ends, motors, fans. What is guessed stands in it as comments, to be corrected. Nobody works near mains by it before each of them is.",
            "proveout describe --name \"Hill bench\" --mains 230 --motors 4 --hot-ends 1 --out hill-bench.yaml",
            "proveout describe --name Dispenser --mains none --frame other --enclosure none --board four --motors 3 --out dispenser.yaml",
            "proveout describe --answers answers.txt --json")
        {
            name, answers, target, options.Json,
        };
        (StartQuestion Question, Option<string?> Option)[] questions = [.. StartQuestions.Groups.SelectMany(group => group.Questions).Select(question => (question, OptionOf(question)))];
        foreach (var (_, option) in questions)
            command.Options.Add(option);
        command.SetAction(parse =>
        {
            var asJson = parse.GetValue(options.Json);
            var file = TextFiles.Read(parse.GetValue(answers));
            if (file.Problem is { } unreadable)
                return terminal.Refuse([unreadable], asJson);
            var read = file.Text is { } text ? AnswersFile.Read(text) : null;
            if (read is { Value: null })
                return terminal.Refuse(read.Diagnostics, asJson);
            var typed = new Dictionary<string, string>(read?.Value ?? new Dictionary<string, string>(), StringComparer.Ordinal);
            foreach (var (question, answer) in questions.Select(each => (each.Question.Name, parse.GetValue(each.Option))).Append((StartQuestions.Name, parse.GetValue(name))))
                if (answer is not null)
                    typed[question] = answer;
            var started = StartedMachine.Of(typed, options.FilesOf(parse));
            return started.Value is { } machine ? Show(terminal, machine, parse.GetValue(target), asJson) : terminal.Refuse(started.Diagnostics, asJson);
        });
        return command;
    }

    private static Option<string?> OptionOf(StartQuestion question)
    {
        var among = question.Choice is { } choice ? $" {string.Join("; ", choice.Choices.Select(each => $"{each.Answer}: {each.Words}"))}." : "";
        return new Option<string?>($"--{question.Name}")
        {
            Description = $"{question.Label}.{among} {question.Hint}{(question.Default.Length > 0 ? $" {question.Default} when left out." : "")}",
            HelpName = question.Figure is { } figure ? (figure.Unit.Length > 0 ? figure.Unit : "NUMBER") : "ANSWER",
        };
    }

    private static int Show(Terminal terminal, StartedFile machine, string? path, bool asJson)
    {
        // What stands there may be a machine whose guesses somebody has corrected already.
        if (path is not null && Path.Exists(path))
            return terminal.Refuse([new Diagnostic("file-exists", new SourcePlace(path, 0, 0), "There is such a file already, and it is left as it is.", "Give another name with `--out`.")], asJson);
        if (path is not null && SafeFile.TryWrite(path, stream => stream.Write(Encoding.UTF8.GetBytes(machine.Text))) is { } problem)
            return terminal.Refuse([problem], asJson);
        if (asJson)
            terminal.Show(StartedShape.Of(machine, path), JsonShapes.Spread.StartedShape);
        else if (path is null)
            foreach (var line in machine.Text.Split('\n'))
                terminal.Say(line);
        else
            ShowGuesses(terminal, machine, path);
        return ExitCode.Fine;
    }

    private static void ShowGuesses(Terminal terminal, StartedFile machine, string path)
    {
        terminal.Warn("A guess that stands unlooked at makes a good reading mean nothing. Correct the file to what is in front of you before anything is measured against it, and before any power.");
        terminal.Say($"{path}: {machine.Design.Parts.Count} parts, {machine.Design.Conductors.Count} conductors. What was guessed, each to be corrected or taken out when it is so:", Meaning.Good);
        var sheet = new Sheet("Line", "About", "Guess");
        foreach (var guess in machine.Guesses)
            sheet.Add(guess.Line.ToString(System.Globalization.CultureInfo.InvariantCulture), guess.Thing, guess.Words);
        terminal.Show(sheet);
    }
}
