using System.Reflection.Metadata;
using System.Text;
using System.Text.RegularExpressions;
using Proveout.Workshop;

namespace Proveout.House.Tests;

/// <summary>What is handed out says which version it is, and is the same wherever it was built.</summary>
public sealed class ReleaseTests
{
    private static readonly string[] Assemblies =
        ["Proveout.Engine", "Proveout.Journal", "Proveout.Publish", "Proveout.Workshop", "Proveout.Web", "proveout"];

    public static TheoryData<string> Names => [.. Assemblies];

    [Fact]
    public void The_version_is_a_semantic_one_and_the_newest_of_the_changelog()
    {
        // The pattern is shortened from that of semver.org 2.0.0.
        Assert.Matches(@"^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)(-[0-9A-Za-z.-]+)?$", ProgramVersion.Number);
        var newest = Regex.Match(File.ReadAllText(Path.Combine(SourceTree.Root, "CHANGELOG.md")), @"^## (\S+)", RegexOptions.Multiline).Groups[1].Value;
        Assert.Equal(ProgramVersion.Number, newest);
    }

    [Fact]
    public void The_version_stands_in_one_place()
    {
        var places = Directory.EnumerateFiles(SourceTree.Root, "*.*proj", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(SourceTree.Root, "Directory.*.props"))
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}builds{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Where(file => Regex.IsMatch(File.ReadAllText(file), "<(Version|AssemblyVersion|FileVersion|InformationalVersion|PackageVersion)>"));
        Assert.Equal("Directory.Build.props", Path.GetFileName(Assert.Single(places)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_assembly_holds_the_folder_that_it_was_built_in(string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, $"{name}.dll"));

        Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(SourceTree.Root)));
        Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.Unicode.GetBytes(SourceTree.Root)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_stack_trace_names_files_from_the_root_of_the_sources(string name)
    {
        using var provider = MetadataReaderProvider.FromPortablePdbStream(File.OpenRead(Path.Combine(AppContext.BaseDirectory, $"{name}.pdb")));
        var symbols = provider.GetMetadataReader();
        var files = symbols.Documents.Select(document => symbols.GetString(symbols.GetDocument(document).Name)).ToArray();

        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.StartsWith("/proveout/src/", file, StringComparison.Ordinal));
    }
}
