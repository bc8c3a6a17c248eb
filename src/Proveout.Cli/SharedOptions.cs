using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Arguments and options that several commands share.</summary>
internal sealed class SharedOptions
{
    /// <summary>Where the part types are.</summary>
    public Option<string?> Catalogue { get; } = new("--catalogue")
    {
        Description = "Folder of part types; the one beside the program when left out.",
        HelpName = "FOLDER",
        Recursive = true,
    };

    /// <summary>The machine.</summary>
    public Argument<string> Machine { get; } = new("MACHINE") { Description = "A machine file, the folder of a machine, or the name of a sample." };

    /// <summary>The build.</summary>
    public Argument<string> Build { get; } = new("BUILD") { Description = "A build: its identifier, the start of it, or its serial number." };

    /// <summary>The journal.</summary>
    public Option<string?> Journal { get; } = new("--journal")
    {
        Description = "The journal: a file, or a PostgreSQL database as postgresql://USER@SERVER/DATABASE; the file in your own data folder when left out.",
        HelpName = "JOURNAL",
    };

    /// <summary>Machines of builds, besides the samples.</summary>
    public Option<string[]?> Machines { get; } = new("--machine")
    {
        Description = "The machine that the build was started from, unless it is a sample; may be given several times.",
        HelpName = "MACHINE",
    };

    /// <summary>Data instead of words.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "Write JSON (docs/json.md describes it)." };

    /// <summary>Who.</summary>
    public Option<string> Builder { get; } = new("--builder") { Description = "Who builds it.", HelpName = "NAME" };

    /// <summary>Which one.</summary>
    public Option<string> Serial { get; } = new("--serial") { Description = "Serial number of the build.", HelpName = "S" };

    /// <summary>Reads machines by the catalogue that was asked for.</summary>
    public MachineFiles FilesOf(ParseResult parse) => new(parse.GetValue(Catalogue) ?? Places.Catalogue);

    /// <summary>Path of the machine that was asked for.</summary>
    public string MachineOf(ParseResult parse) => Places.MachineAt(parse.GetValue(Machine)!);

    /// <summary>Path or address of the journal that was asked for.</summary>
    public string JournalOf(ParseResult parse) => parse.GetValue(Journal) ?? Places.Journal;

    /// <summary>Paths of the machines besides the samples.</summary>
    public IReadOnlyList<string> MachinesOf(ParseResult parse) => [.. (parse.GetValue(Machines) ?? []).Select(Places.MachineAt)];
}
