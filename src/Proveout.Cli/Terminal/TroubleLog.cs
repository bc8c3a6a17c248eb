using System.Globalization;

namespace Proveout.Cli;

/// <summary>Keeps the details of a mistake of the program for whoever mends it.</summary>
internal static class TroubleLog
{
    /// <summary>Writes the details to a file and returns its path; null when no file can be written.</summary>
    public static string? Write(Exception exception, TimeProvider clock)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"trouble-{clock.GetUtcNow():yyyyMMdd-HHmmss-fff}.log");
        foreach (var folder in new[] { Places.DataFolder, Path.GetTempPath() })
            try
            {
                Directory.CreateDirectory(folder);
                var path = Path.Combine(folder, name);
                File.WriteAllText(path, $"{Environment.OSVersion}\n{exception}\n");
                return path;
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
            {
                continue;
            }

        return null;
    }
}
