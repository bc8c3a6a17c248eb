using Proveout.Journal;

namespace Proveout.Cli;

/// <summary>Where things are when nobody says otherwise.</summary>
internal static class Places
{
    /// <summary>The catalogue beside the program.</summary>
    public static string Catalogue => Path.Combine(AppContext.BaseDirectory, "catalogue");

    /// <summary>The samples beside the program.</summary>
    public static string Samples => Path.Combine(AppContext.BaseDirectory, "samples");

    /// <summary>The person's own folder for the program's data.</summary>
    public static string DataFolder
    {
        get
        {
            var home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
            return Path.Combine(home.Length > 0 ? home : Path.GetTempPath(), "proveout");
        }
    }

    /// <summary>The journal in that folder.</summary>
    public static string Journal => Path.Combine(DataFolder, "journal.db");

    /// <summary>The folder of a person's own machines: beside the journal of their builds, or in their own folder when that is a database.</summary>
    public static string OwnMachinesBeside(string journal) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(FileOf(journal)))!, "machines");

    /// <summary>The file that other files of a journal lie beside: its own, or one in the person's own folder when it is a database.</summary>
    public static string FileOf(string journal) => JournalPlace.IsDatabase(journal) ? Journal : journal;

    /// <summary>Folders of the sample machines.</summary>
    public static IReadOnlyList<string> SampleMachines => Directory.Exists(Samples)
        ? [.. Directory.EnumerateDirectories(Samples).Where(folder => File.Exists(Path.Combine(folder, "machine.yaml"))).Order(StringComparer.Ordinal)]
        : [];

    /// <summary>The path itself where there is something, else that of one's own machine or of the sample of this name, else the path.</summary>
    public static string MachineAt(string path)
    {
        if (Path.Exists(path))
            return path;
        var own = Path.Combine(OwnMachinesBeside(Journal), path);
        if (Path.GetFileName(path) == path && Directory.Exists(own))
            return own;
        var sample = Path.Combine(Samples, path.StartsWith("samples/", StringComparison.Ordinal) ? path["samples/".Length..] : path);
        return Directory.Exists(sample) ? sample : path;
    }
}
