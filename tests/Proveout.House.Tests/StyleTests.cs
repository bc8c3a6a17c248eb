using System.Text.RegularExpressions;

namespace Proveout.House.Tests;

/// <summary>What the browser tests take for granted of the style sheets.</summary>
public sealed partial class StyleTests
{
    // A dark page is asked only the rules of colours, because all else was asked of the light one.
    [Fact]
    public void A_dark_screen_changes_colours_and_nothing_else()
    {
        string[] sheets = [.. SourceTree.Files("*.css", "src").Select(File.ReadAllText)];
        var blocks = sheets.SelectMany(sheet => DarkBlock().Matches(sheet)).Select(match => match.Groups["inside"].Value).ToArray();

        Assert.NotEmpty(blocks);
        Assert.Equal(sheets.Sum(sheet => Mention().Count(sheet)), blocks.Length);
        Assert.All(blocks, inside => Assert.All(
            inside.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
            declaration => Assert.Matches(ColourVariable(), declaration)));
    }

    [GeneratedRegex(@"prefers-color-scheme:\s*dark\)\s*\{\s*:root\s*\{(?<inside>[^}]*)\}\s*\}")]
    private static partial Regex DarkBlock();

    [GeneratedRegex(@"prefers-color-scheme:\s*dark")]
    private static partial Regex Mention();

    [GeneratedRegex("^--[a-z-]+: #[0-9a-f]{6}$")]
    private static partial Regex ColourVariable();
}
