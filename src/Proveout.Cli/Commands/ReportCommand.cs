using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Publish.Report;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout report BUILD</c>.</summary>
internal static class ReportCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var folder = new Option<string>("--out") { Description = "Folder to write to; this one when left out.", HelpName = "FOLDER", DefaultValueFactory = _ => "." };
        var command = new ExampleCommand("report", "Write the record of a build as a page and as a PDF.", "proveout report P-7 --out records")
        {
            options.Build, options.Journal, options.Machines, folder, options.Json,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var opened = await OpenedBuild.OpenAsync(
                terminal,
                options.FilesOf(parse),
                options.MachinesOf(parse),
                options.JournalOf(parse),
                parse.GetValue(options.Build)!,
                cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics, asJson);
            await using var build = opened.Value;
            return await WriteAsync(terminal, build, parse.GetValue(folder)!, asJson, cancellation);
        });
        return command;
    }

    private static async Task<int> WriteAsync(Terminal terminal, OpenedBuild build, string folder, bool asJson, CancellationToken cancellation)
    {
        var place = build.Workplace;
        var report = (await place.Reports.OfAsync(build.Build.Id.ToString(), cancellation))!;
        var name = Path.Combine(folder, FileNameOf($"{report.Machine} {report.Serial}"));
        string[] files = [$"{name}.html", $"{name}.pdf"];
        Diagnostic?[] problems =
        [
            SafeFile.TryWrite(files[0], stream => stream.Write(Encoding.UTF8.GetBytes(HtmlReport.Write(report)))),
            SafeFile.TryWrite(files[1], stream => PdfReport.Write(report, stream)),
        ];
        if (problems.OfType<Diagnostic>().ToArray() is { Length: > 0 } found)
            return terminal.Refuse(found, asJson);
        if (asJson)
            terminal.Show(new ReportShape("proveout-report 1", build.Build.Id.ToString(), files), JsonShapes.Spread.ReportShape);
        else
            foreach (var file in files)
                terminal.Say(file);
        return ExitCode.Fine;
    }

    private static string FileNameOf(string text) => PlainNames.Of(text) is { Length: > 0 } name ? name : "record";
}
