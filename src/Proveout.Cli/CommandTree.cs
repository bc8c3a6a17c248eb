using System.CommandLine;
using System.CommandLine.Help;

namespace Proveout.Cli;

/// <summary>Every command of the program.</summary>
internal static class CommandTree
{
    /// <summary>The tree; building it touches no file.</summary>
    public static RootCommand Build(Terminal terminal)
    {
        var options = new SharedOptions();
        var root = new RootCommand("Proveout helps to wire a machine that moves and heats, to prove it before power, to get it square, tuned and into use, and to keep a record. Without a command it serves the bench.")
        {
            options.Catalogue,
            // In the order of the job, as the list of commands shows them.
            ServeCommand.Build(terminal, options),
            PeopleCommand.Build(terminal, options),
            HealthCommand.Build(terminal, options),
            DescribeCommand.Build(terminal, options),
            WiresCommand.Build(terminal, options),
            ReviewCommand.Build(terminal, options),
            CompareCommand.Build(terminal, options),
            StagesCommand.Build(terminal, options),
            SchedulesCommand.Build(terminal, options),
            DrawingsCommand.Build(terminal, options),
            PlanCommand.Build(terminal, options),
            ReadingsCommand.Build(terminal, options),
            WalkCommand.Build(terminal, options),
            BenchCommand.Build(terminal, options),
            ImportReadingsCommand.Build(terminal, options),
            DiagnoseCommand.Build(terminal, options),
            AskCommand.Build(terminal, options),
            RehearseCommand.Build(terminal, options),
            EnergiseCommand.Build(terminal, options),
            FrameCommand.Build(terminal, options),
            BeltsCommand.Build(terminal, options),
            TensionCommand.Build(terminal, options),
            MotorCommand.Build(terminal, options),
            LevelCommand.Build(terminal, options),
            BudgetCommand.Build(terminal, options),
            HeatCommand.Build(terminal, options),
            HeatLogCommand.Build(terminal, options),
            AirCommand.Build(terminal, options),
            SettingsCommand.Build(terminal, options),
            ResonanceCommand.Build(terminal, options),
            PieceCommand.Build(terminal, options),
            AcceptCommand.Build(terminal, options),
            BuildsCommand.Build(terminal, options),
            ReportCommand.Build(terminal, options),
            PublishCommand.Build(terminal, options),
            VerifyCommand.Build(terminal, options),
            SealKeyCommand.Build(terminal, options),
            SealCommand.Build(terminal, options),
            BackupCommand.Build(terminal, options),
            RestoreCommand.Build(terminal, options),
            RescueCommand.Build(terminal, options),
            ExportBuildCommand.Build(terminal, options),
            ImportBuildCommand.Build(terminal, options),
            CopyJournalCommand.Build(terminal, options),
            SchemaCommand.Build(terminal),
        };
        root.SetAction((parse, cancellation) => ServeCommand.RunWithDefaultsAsync(terminal, options.FilesOf(parse), cancellation));
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new ExampleHelp((HelpAction)help.Action!);
        return root;
    }
}
