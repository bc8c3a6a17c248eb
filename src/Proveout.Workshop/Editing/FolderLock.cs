using System.Diagnostics;

namespace Proveout.Workshop;

/// <summary>Lets one process at a time work in a folder, by an open file that nobody else may open.</summary>
/// <remarks>Revisions would not be lost without it, for each number is given once; but one process must not write a machine's files over those of the next.</remarks>
internal static class FolderLock
{
    private const int LongestWaitMilliseconds = 10_000;
    private const int PauseMilliseconds = 4;

    /// <summary>Waits for the folder; nothing is locked where nothing can be written.</summary>
    /// <exception cref="IOException">Somebody keeps it for longer than any save takes.</exception>
    public static IDisposable Take(string folder)
    {
        var path = Path.Combine(folder, "in-use");
        for (var waited = Stopwatch.StartNew(); ; Thread.Sleep(PauseMilliseconds))
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (UnauthorizedAccessException)
            {
                return Stream.Null;
            }
            catch (IOException) when (waited.ElapsedMilliseconds < LongestWaitMilliseconds)
            {
            }
    }
}
