namespace Proveout.Journal.Tests;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-journal-");

    public string Path => _folder.FullName;

    public string Journal => System.IO.Path.Combine(_folder.FullName, "journal.db");

    public void Dispose() => _folder.Delete(recursive: true);
}
