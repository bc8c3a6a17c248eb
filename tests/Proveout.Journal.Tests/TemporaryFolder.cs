namespace Proveout.Journal.Tests;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-journal-");

    public string Path => _folder.FullName;

    public string Journal => System.IO.Path.Combine(_folder.FullName, "journal.db");

    /// <summary>Lets nobody write into the folder, by the permissions of Unix.</summary>
    public void MakeReadOnly()
    {
        if (OperatingSystem.IsWindows())
            Assert.Skip("Folders are made read-only by permissions of Unix here.");
        else
            _folder.UnixFileMode = (UnixFileMode)0b101_101_101;
    }

    public void Dispose()
    {
        if (!OperatingSystem.IsWindows())
            _folder.UnixFileMode |= UnixFileMode.UserWrite;
        _folder.Delete(recursive: true);
    }
}
