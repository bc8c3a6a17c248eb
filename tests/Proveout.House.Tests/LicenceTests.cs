using System.Text.Json;
using System.Text.RegularExpressions;

namespace Proveout.House.Tests;

/// <summary>docs/licences.md names every package of every lock file, and what is handed out is under permissive licences.</summary>
public sealed partial class LicenceTests
{
    private const string BuildOnly = "Microsoft.CodeAnalysis.BannedApiAnalyzers";

    private static readonly string[] Permissive = ["MIT", "MIT-0", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "PostgreSQL", "ISC", "Unlicense OR MIT", "public domain"];

    private static readonly Dictionary<string, string> Shipped = Read(section: 1);

    private static readonly Dictionary<string, string> Others = Read(section: 2);

    [Fact]
    public void Every_package_of_the_program_is_listed_under_a_permissive_licence()
    {
        var packages = Packages("src").Where(package => !package.StartsWith($"{BuildOnly} ", StringComparison.Ordinal)).ToArray();

        Assert.NotEmpty(packages);
        Assert.DoesNotContain(packages, package => !Shipped.ContainsKey(package));
        Assert.All(Shipped.Values, licence => Assert.Contains(licence, Permissive));
    }

    [Fact]
    public void Every_package_that_builds_tests_or_measures_is_listed_under_a_licence_that_asks_nothing_of_ours()
    {
        var packages = Packages("tests").Concat(Packages("bench")).ToArray();

        Assert.NotEmpty(packages);
        Assert.DoesNotContain(packages, package => !Shipped.ContainsKey(package) && !Others.ContainsKey(package));
        Assert.All(Others.Values, licence => Assert.Contains(licence, Permissive.Append("MPL-2.0")));
    }

    [Fact]
    public void No_package_is_listed_that_is_not_used()
    {
        var used = new[] { "src", "tests", "bench" }.SelectMany(Packages).ToHashSet(StringComparer.Ordinal);

        Assert.DoesNotContain(Shipped.Keys.Concat(Others.Keys), package => !used.Contains(package));
    }

    private static IEnumerable<string> Packages(string folder) =>
        from file in Directory.EnumerateFiles(Path.Combine(SourceTree.Root, folder), "packages.lock.json", SearchOption.AllDirectories)
        from framework in Parse(file).GetProperty("dependencies").EnumerateObject()
        from package in framework.Value.EnumerateObject()
        where package.Value.GetProperty("type").GetString() != "Project"
        select $"{package.Name} {package.Value.GetProperty("resolved").GetString()}";

    private static JsonElement Parse(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        return document.RootElement.Clone();
    }

    private static Dictionary<string, string> Read(int section) =>
        Row().Matches(File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "licences.md")).Split("\n## ")[section])
            .ToDictionary(row => $"{row.Groups[1].Value} {row.Groups[2].Value}", row => row.Groups[3].Value, StringComparer.Ordinal);

    [GeneratedRegex(@"^\| ([^ |]+) \| (\d[^ |]*) \| ([^|]+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
