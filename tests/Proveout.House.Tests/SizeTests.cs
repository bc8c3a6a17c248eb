namespace Proveout.House.Tests;

/// <summary>Sizes that keep the house easy to walk through: docs/architecture.md and CONTRIBUTING.md.</summary>
public sealed class SizeTests
{
    private static readonly int[] Lengths = [.. SourceTree.CSharpFiles("src").Select(file => File.ReadLines(file).Count()).Order()];

    [Fact]
    public void Half_of_the_files_have_at_most_eighty_lines() => Assert.InRange(Lengths[Lengths.Length / 2], 1, 80);

    [Fact]
    public void Nine_files_of_ten_have_at_most_two_hundred_lines() => Assert.InRange(Lengths[Lengths.Length * 9 / 10], 1, 200);

    [Fact]
    public void No_file_has_more_than_four_hundred_lines() => Assert.InRange(Lengths[^1], 1, 400);
}
