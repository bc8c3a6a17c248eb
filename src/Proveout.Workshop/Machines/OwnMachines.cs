namespace Proveout.Workshop;

/// <summary>The folder of a person's own machines: a folder for each.</summary>
internal static class OwnMachines
{
    /// <summary>Paths of the machines in it, by name; none when there is no such folder.</summary>
    public static IEnumerable<string> In(string? folder)
    {
        try
        {
            return folder is not null && Directory.Exists(folder)
                ? [.. Directory.EnumerateDirectories(folder).Where(path => !path.EndsWith(RevisionFolder.Ending, StringComparison.Ordinal)).Order(StringComparer.Ordinal)]
                : [];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
