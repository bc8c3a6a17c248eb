using System.Text.RegularExpressions;

namespace Proveout.House.Tests;

/// <summary>Imports run downward only: docs/architecture.md.</summary>
public sealed partial class DependencyTests
{
    [Theory]
    [InlineData("Proveout.Engine/Machine", "")]
    [InlineData("Proveout.Engine/Numerics", "Engine.Machine")]
    [InlineData("Proveout.Engine/Faults", "Engine.Machine, Engine.Numerics")]
    [InlineData("Proveout.Engine/Electrical", "Engine.Machine, Engine.Numerics, Engine.Faults")]
    [InlineData("Proveout.Engine/Heat", "Engine.Machine, Engine.Numerics, Engine.Faults")]
    [InlineData("Proveout.Engine/Motion", "Engine.Machine, Engine.Numerics, Engine.Faults")]
    [InlineData("Proveout.Journal", "Journal")]
    [InlineData("Proveout.Publish", "Engine.Machine, Engine.Faults, Publish")]
    [InlineData("Proveout.Workshop", "Engine.Machine, Engine.Faults, Engine.Electrical, Engine.Heat, Engine.Motion, Engine.Numerics, Journal, Publish")]
    [InlineData("Proveout.Web", "Engine.Machine, Engine.Faults, Workshop, Web")]
    public void A_folder_names_only_what_lies_below_it(string folder, string allowed)
    {
        var permitted = allowed.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        var own = folder.Replace("Proveout.", "", StringComparison.Ordinal).Replace('/', '.');
        var strangers =
            from file in SourceTree.CSharpFiles("src", folder)
            from name in Names(File.ReadAllText(file))
            where !name.StartsWith(own, StringComparison.Ordinal) && !permitted.Any(prefix => name.StartsWith(prefix, StringComparison.Ordinal))
            select $"{Path.GetFileName(file)} names {name}";
        Assert.Empty(strangers.Distinct());
    }

    [Fact]
    public void The_engine_reads_no_file_clock_console_or_network()
    {
        string[] forbidden = ["File.Read", "File.Open", "Directory.", "TimeProvider", "Stopwatch", "Console.", "HttpClient", "Environment."];
        var breaches =
            from file in SourceTree.CSharpFiles("src", "Proveout.Engine")
            let text = File.ReadAllText(file)
            from word in forbidden
            where text.Contains(word, StringComparison.Ordinal)
            select $"{Path.GetFileName(file)}: {word}";
        Assert.Empty(breaches);
    }

    private static IEnumerable<string> Names(string text) => Reference().Matches(text).Select(match => match.Groups[1].Value);

    [GeneratedRegex(@"^(?:using(?: static)?|global using) Proveout\.([A-Za-z.]+);", RegexOptions.Multiline)]
    private static partial Regex Reference();
}
