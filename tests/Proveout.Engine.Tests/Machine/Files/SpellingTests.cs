using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class SpellingTests
{
    // Worked examples of the literature: "kitten"/"sitting" is 3; a swap of neighbours counts one (Damerau 1964).
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("colour", "color", 1)]
    [InlineData("colour", "coluor", 1)]
    [InlineData("a", "", 1)]
    [InlineData("", "", 0)]
    [InlineData("Line", "line", 0)]
    [InlineData("ca", "abc", 3)] // optimal string alignment; the unrestricted distance is 2
    public void The_distance_counts_slips(string left, string right, int slips) => Assert.Equal(slips, Spelling.Distance(left, right, 10));

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("LENGTH", "length")]
    [InlineData("colors", "colour")]
    [InlineData("to", null)]
    [InlineData("x", null)]
    public void The_nearest_is_named_only_when_it_is_near(string wrong, string? nearest) =>
        Assert.Equal(nearest, Spelling.Nearest(wrong, ["from", "colour", "length", "section"]));

    [Fact]
    public void A_long_list_is_not_read_out() =>
        Assert.Equal("None of the 21 valid ones is spelled like it.", Spelling.Hint("zzz", [.. Enumerable.Range(0, 21).Select(number => $"a{number}")]));

    [Fact]
    public void Giving_up_early_never_changes_an_answer_within_the_limit() =>
        Prop.ForAll<NonNull<string>, NonNull<string>>((left, right) =>
        {
            var (a, b) = (left.Get[..Math.Min(left.Get.Length, 40)], right.Get[..Math.Min(right.Get.Length, 40)]);
            var full = Spelling.Distance(a, b, 1_000);
            var limited = Spelling.Distance(a, b, 3);
            return full <= 3 ? limited == full : limited > 3;
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(1_000));
}
