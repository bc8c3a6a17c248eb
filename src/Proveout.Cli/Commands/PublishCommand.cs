using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout publish MACHINE|BUILD --to FOLDER</c>: a build book for those who build the same machine.</summary>
internal static class PublishCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var subject = new Argument<string>("MACHINE|BUILD") { Description = "A machine as designed, or a build with what was read, photographed and found on it." };
        var folder = new Option<string>("--to") { Description = "Folder to write to: a new or empty one, or one that a book was written to before.", HelpName = "FOLDER", Required = true };
        var asked = new BookOptions();
        var command = new ExampleCommand(
            "publish",
            "Write a build book: pages that need no network and a PDF, with lists, drawings, steps, checks, settings and the machine file, for others who build the same.",
            "proveout publish samples/alderbrook --to book --licence CC-BY-SA-4.0",
            "proveout publish P-7 --to book --licence \"Free to use and to change\" --credit \"Photographs by the builder\"")
        {
            subject, folder, options.Journal, options.Machines, options.Json,
        };
        asked.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var into = parse.GetValue(folder)!;
            // Before the minute that the book takes.
            if (BookFolder.Refusal(into) is { } refusal)
                return terminal.Refuse([refusal], asJson);
            var book = await MakeAsync(terminal, options, parse, parse.GetValue(subject)!, asked.Read(parse), cancellation);
            if (book.Value is not { } made)
                return terminal.Refuse(book.Diagnostics, asJson);
            if (BookFolder.Write(into, made) is { Count: > 0 } problems)
                return terminal.Refuse(problems, asJson);
            if (asJson)
                terminal.Show(BookShape.Of(into, made), JsonShapes.Spread.BookShape);
            else
                Show(terminal, into, made);
            return ExitCode.Fine;
        });
        return command;
    }

    private static async Task<Outcome<PublishedBook>> MakeAsync(
        Terminal terminal, SharedOptions options, ParseResult parse, string wanted, BookRequest request, CancellationToken cancellation)
    {
        var files = options.FilesOf(parse);
        var path = Places.MachineAt(wanted);
        if (Path.Exists(path))
        {
            var read = files.Read(path);
            if (read.Value is not { } machine)
                return Outcome.Refused<PublishedBook>(read.Diagnostics);
            var planned = await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation);
            return await Progress.ShowAsync(
                terminal, $"Writing the book of {machine.Design.Name}", () => BookDesk.OfMachine(planned, EnergisingViews.Of(planned, cancellation), request), cancellation);
        }

        var opened = await OpenedBuild.OpenAsync(terminal, files, options.MachinesOf(parse), options.JournalOf(parse), wanted, cancellation);
        if (opened.Value is null)
            return Outcome.Refused<PublishedBook>(opened.Diagnostics);
        await using var build = opened.Value;
        return await Progress.ShowAsync(
            terminal,
            $"Writing the book of {build.Build.MachineName}",
            () => build.Workplace.Books.OfBuildAsync(build.Build.Id.ToString(), request, cancellation).GetAwaiter().GetResult()!,
            cancellation);
    }

    private static void Show(Terminal terminal, string folder, PublishedBook book)
    {
        foreach (var note in book.Withheld)
            terminal.Say(
                FormattableString.Invariant($"Left out, entry {note.Sequence}: {note.Why} {(note.CanBeLetIn ? FormattableString.Invariant($"Read it; if it names nobody, publish with --note {note.Sequence}.") : "Only --with-names lets it in.")}"),
                Meaning.Caution);
        terminal.Say(FormattableString.Invariant($"{book.Files.Count} files. Open {Path.Combine(folder, "index.html")}"));
    }
}
