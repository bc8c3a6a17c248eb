namespace Proveout.Cli.Tests;

public sealed class PublishTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    private static Task<Run> PublishAsync(string into, params string[] more) => Run.OfAsync(["publish", "pennywort", "--to", into, .. more]);

    [Fact]
    public async Task A_book_of_a_machine_is_a_folder_of_pages_with_a_PDF_and_the_machine_file()
    {
        var run = await PublishAsync(folder.At("book"), "--licence", "CC-BY-4.0", "--credit", "Drawn at the club");

        Assert.Equal((0, ""), (run.Exit, run.Complaints));
        Assert.Contains("Open ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Drawn at the club", await File.ReadAllTextAsync(folder.At("book/index.html")), StringComparison.Ordinal);
        Assert.True(File.Exists(folder.At("book/book.pdf")));
        Assert.NotEmpty(Directory.EnumerateFiles(folder.At("book/machine"), "*.yaml", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task Publishing_again_takes_away_what_the_book_no_longer_has_and_nothing_else()
    {
        var into = folder.At("again");
        await PublishAsync(into);
        var marker = Path.Combine(into, "proveout-book.txt");
        var kept = folder.Write("kept.txt", "outside");
        await File.WriteAllTextAsync(Path.Combine(into, "old-chapter.html"), "from an earlier book");
        await File.WriteAllTextAsync(Path.Combine(into, "mine.txt"), "a file of the author");
        await File.AppendAllTextAsync(marker, "old-chapter.html\n../kept.txt\n/etc/passwd\n");

        var run = await PublishAsync(into);

        Assert.Equal(0, run.Exit);
        Assert.False(File.Exists(Path.Combine(into, "old-chapter.html")));
        Assert.True(File.Exists(Path.Combine(into, "mine.txt")));
        Assert.Equal("outside", await File.ReadAllTextAsync(kept));
        Assert.DoesNotContain("old-chapter", await File.ReadAllTextAsync(marker), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_no_book_was_written_to_is_not_touched()
    {
        var mine = folder.Write("holiday/index.html", "mine");

        var run = await PublishAsync(Path.GetDirectoryName(mine)!);

        Assert.Equal(2, run.Exit);
        Assert.Contains("nothing in it is touched", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(mine));
        Assert.Single(Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(mine)!));
    }

    [Fact]
    public async Task A_book_is_not_written_through_a_link_to_another_place()
    {
        var into = folder.At("linked");
        Directory.CreateDirectory(folder.At("elsewhere"));
        Directory.CreateDirectory(into);
        await File.WriteAllTextAsync(Path.Combine(into, "proveout-book.txt"), "A build book, written by `proveout publish`. Publishing to this folder again replaces or removes the files named below, and no others.\n");
        Directory.CreateSymbolicLink(Path.Combine(into, "drawings"), folder.At("elsewhere"));

        var run = await PublishAsync(into);

        Assert.Equal(2, run.Exit);
        Assert.Contains("a link to another place", run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.At("elsewhere")));
    }

    [Fact]
    public async Task A_book_of_a_build_says_in_JSON_which_notes_were_left_out()
    {
        var journal = folder.At("journal.db");
        await Run.WithInputAsync("skip Hartmuth has the probe\nquit\n", "bench", "pennywort", "--serial", "B-1", "--builder", "Mara Lindt", "--journal", journal);

        var run = await Run.OfAsync("publish", "B-1", "--to", folder.At("of-build"), "--journal", journal, "--json");

        Assert.Equal(0, run.Exit);
        Assert.Contains("\"proveout-book 1\"", run.Output, StringComparison.Ordinal);
        Assert.Contains("hartmuth", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Hartmuth", await File.ReadAllTextAsync(folder.At("of-build/differences.html")), StringComparison.Ordinal);
    }
}
