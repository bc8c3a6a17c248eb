namespace Proveout.Fuzz;

/// <summary>The inputs kept under tests/cases/fuzz: small sound ones to begin with, and every one that once failed.</summary>
public static class Corpus
{
    /// <summary>The repository that the program was built from.</summary>
    public static string Root { get; } = Find();

    /// <summary>The inputs of a target, in the order of their names.</summary>
    public static IReadOnlyList<(string Name, byte[] Bytes)> Of(string target)
    {
        var folder = new DirectoryInfo(Path.Combine(Root, "tests", "cases", "fuzz", target));
        return folder.Exists
            ? [.. folder.EnumerateFiles().OrderBy(file => file.Name, StringComparer.Ordinal).Select(file => (file.Name, File.ReadAllBytes(file.FullName)))]
            : throw new DirectoryNotFoundException($"{folder.FullName} is missing: each target needs at least one input to begin with.");
    }

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The program runs from inside the repository.");
    }
}
