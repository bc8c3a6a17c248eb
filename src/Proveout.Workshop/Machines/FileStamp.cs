using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Tells whether a file or the files of a folder were changed.</summary>
internal static class FileStamp
{
    /// <summary>Names, sizes and times of change of a file, or of all <c>*.yaml</c> files of a folder.</summary>
    public static string Of(string path)
    {
        try
        {
            var folder = new DirectoryInfo(path);
            FileInfo[] files = folder.Exists ? [.. folder.EnumerateFiles("*.yaml").OrderBy(file => file.Name, StringComparer.Ordinal)] : [new FileInfo(path)];
            return string.Join('|', files.Select(file => file.Exists ? string.Create(CultureInfo.InvariantCulture, $"{file.Name}:{file.Length}:{file.LastWriteTimeUtc.Ticks}") : ""));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}
