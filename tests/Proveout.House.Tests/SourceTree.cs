namespace Proveout.House.Tests;

/// <summary>The source files of the repository that the tests were built from.</summary>
internal static class SourceTree
{
    public static string Root { get; } = Find();

    public static IEnumerable<string> CSharpFiles(params string[] folder) =>
        Directory.EnumerateFiles(Path.Combine([Root, .. folder]), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run from inside the repository.");
    }
}
