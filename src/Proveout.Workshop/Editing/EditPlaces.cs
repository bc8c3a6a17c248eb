namespace Proveout.Workshop;

/// <summary>Where machines may be written.</summary>
/// <param name="OwnFolder">Folder that new machines are made in.</param>
/// <param name="KeptFolder">Folder whose machines came with the program and are never changed; null when there is none.</param>
public sealed record EditPlaces(string OwnFolder, string? KeptFolder)
{
    /// <summary>True when the machine at a path may be changed in its place.</summary>
    public bool MayWrite(string path) => KeptFolder is null || !IsWithin(path, KeptFolder);

    private static bool IsWithin(string path, string folder)
    {
        var relative = Path.GetRelativePath(Path.GetFullPath(folder), Path.GetFullPath(path));
        return relative != ".." && !relative.StartsWith($"..{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !Path.IsPathRooted(relative);
    }
}
