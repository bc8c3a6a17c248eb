using System.Globalization;
using Proveout.Journal;

namespace Proveout.Workshop.Tests.Books;

/// <summary>Whom a published book names.</summary>
public sealed class PersonalDataTests(BookOfBuild build) : IClassFixture<BookOfBuild>
{
    [Fact]
    public async Task The_record_does_name_whoever_was_planted_in_it()
    {
        var entries = await build.Journal.ReadAsync(Guid.Parse(build.Build), 0, TestContext.Current.CancellationToken);
        var said = string.Join('\n', entries.Select(entry => $"{entry.Person} {entry.Instrument} {entry.Content} {string.Join(' ', (entry.Content as MeasurementTaken)?.Results ?? [])}")) + "QX-7731 Zebulina Quandt Marchionne Ermentrud";

        Assert.All(BookOfBuild.Planted, name => Assert.Contains(name, said, StringComparison.Ordinal));
    }

    [Fact]
    public void No_name_that_was_planted_anywhere_in_the_record_leaves_it()
    {
        var found = from file in build.Plain.Files
                    let text = BookOfBuild.TextOf(file)
                    from name in BookOfBuild.Planted
                    where text.Contains(name, StringComparison.OrdinalIgnoreCase) || file.Name.Contains(name, StringComparison.OrdinalIgnoreCase)
                    select $"{name} in {file.Name}";

        Assert.Empty(found);
    }

    [Fact]
    public async Task No_moment_of_the_record_and_no_identifier_of_the_build_leaves_it()
    {
        var entries = await build.Journal.ReadAsync(Guid.Parse(build.Build), 0, TestContext.Current.CancellationToken);
        var told = build.Plain.Files.Select(BookOfBuild.TextOf).ToArray();

        Assert.All(entries, entry => Assert.DoesNotContain(told, text => text.Contains(entry.Recorded.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), StringComparison.Ordinal)));
        Assert.DoesNotContain(told, text => text.Contains(build.Build, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void With_names_the_book_says_who_built_it_and_what_was_noted()
    {
        Assert.Contains("build QX-7731 by Zebulina Quandt", BookOfBuild.Text(build.WithNames, "index.html"), StringComparison.Ordinal);
        Assert.Contains("Brunhilde made the wire longer", BookOfBuild.Text(build.WithNames, "differences.html"), StringComparison.Ordinal);
        Assert.Contains("Philippa Storck", BookOfBuild.Text(build.WithNames, "differences.html"), StringComparison.Ordinal);
        Assert.Empty(build.WithNames.Withheld);
    }

    [Fact]
    public void A_note_of_words_that_the_book_says_anyway_goes_in() =>
        Assert.Contains("the wire is to land on the part", BookOfBuild.Text(build.Plain, "differences.html"), StringComparison.Ordinal);

    [Fact]
    public void The_author_learns_what_was_left_out_and_which_word_could_be_a_name()
    {
        Assert.Contains(build.Plain.Withheld, note => note.CanBeLetIn && note.Why.StartsWith("`brunhilde`", StringComparison.Ordinal));
        Assert.Contains(build.Plain.Withheld, note => note.Why.Contains("time of day", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_note_that_the_author_has_read_goes_in_unless_it_surely_names_somebody()
    {
        var read = await build.AppendAsync(new NoteWritten("gusset sits askew"));
        var named = await build.AppendAsync(new NoteWritten("gusset bent by walpurga"));

        var book = (await build.Desk.OfBuildAsync(build.Build, BookRequest.Plain with { Notes = [read.Sequence, named.Sequence] }, TestContext.Current.CancellationToken))!.Value!;

        Assert.Contains("gusset sits askew", BookOfBuild.Text(book, "differences.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("gusset bent", BookOfBuild.Text(book, "differences.html"), StringComparison.Ordinal);
        Assert.Contains(book.Withheld, note => note.Sequence == named.Sequence && !note.CanBeLetIn);
    }

    [Theory]
    [InlineData("came at 7:05", true)]
    [InlineData("came at 19.30", true)]
    [InlineData("came at 7 pm", true)]
    [InlineData("call 030 123 4567", true)]
    [InlineData("0.30 mm too wide", false)]
    [InlineData("reads 12.35 V", false)]
    [InlineData("fuse of 5 A for 10 A", false)]
    public void A_time_of_day_or_a_long_number_is_told_from_a_figure(string text, bool expected) => Assert.Equal(expected, NameWords.SaysTimeOrNumber(text));
}
