namespace Proveout.House.Tests;

/// <summary>The source files of the repository that the tests were built from.</summary>
internal static class SourceTree
{
    public static string Root { get; } = Find();

    public static IEnumerable<string> CSharpFiles(params string[] folder) => Files("*.cs", folder);

    /// <summary>The files of a name like a pattern, without what builds make.</summary>
    public static IEnumerable<string> Files(string pattern, params string[] folder) =>
        Directory.EnumerateFiles(Path.Combine([Root, .. folder]), pattern, SearchOption.AllDirectories).Where(file => !IsMade(file));

    private static bool IsMade(string file) => file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin");

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run from inside the repository.");
    }
}
