namespace Proveout.Cli.Tests;

/// <summary>A folder that goes when the tests of a class are done.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-cli-");

    public string Root => _folder.FullName;

    public string At(string name) => Path.Combine(Root, name);

    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
