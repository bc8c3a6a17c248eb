using System.Text;
using Microsoft.Data.Sqlite;

namespace Proveout.Cli.Tests;

public sealed class RecordTests(RecordTests.Imported imported) : IClassFixture<RecordTests.Imported>
{
    [Fact]
    public async Task A_measurement_is_kept_in_the_record_of_a_build_with_its_file()
    {
        var map = imported.Folder.Write("plate-map.csv", "x;y;z\n0;0;0\n300;0;0,1\n0;300;0,05\n300;300;0,2\n");
        string[] words = ["level", map, "--keep", "P-1", "--title", "Plate cold", "--person", "Ida Holm", "--journal", imported.Journal];

        var kept = await Run.OfAsync(words);
        var refused = await Run.OfAsync([.. words, "--keep", "none"]);
        var typed = await Run.OfAsync("tension", "--frequency", "110", "--keep", "nobody", "--journal", imported.Journal);

        Assert.Contains("Kept in the record of P-1 as entry", kept.Output, StringComparison.Ordinal);
        Assert.Equal(2, typed.Exit);
        Assert.Contains("No build has `nobody`", typed.Error, StringComparison.Ordinal);
        Assert.Equal("", typed.Output);
        Assert.Equal(2, refused.Exit);
        var report = await Run.OfAsync("report", "P-1", "--journal", imported.Journal, "--out", imported.Folder.At("kept"));
        Assert.Equal(0, report.Exit);
        Assert.Contains(Directory.EnumerateFiles(imported.Folder.At("kept"), "*.html"), file => File.ReadAllText(file).Contains("Measured: Plate cold.", StringComparison.Ordinal));
    }

    [Fact]
    public void Imported_readings_with_mistakes_end_with_findings()
    {
        Assert.Equal((1, ""), (imported.Import.Exit, imported.Import.Complaints));
        Assert.Contains("P-1", imported.Import.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Builds_are_listed_with_serial_machine_and_builder()
    {
        var run = await Run.OfAsync("builds", "--journal", imported.Journal);

        Assert.Equal(0, run.Exit);
        Assert.Matches("P-1 +Pennywort +Mara Lindt", run.Output);
    }

    [Fact]
    public async Task A_build_of_the_journal_is_diagnosed()
    {
        var run = await Run.OfAsync("diagnose", "P-1", "--journal", imported.Journal);

        Assert.Equal(1, run.Exit);
        Assert.Contains("W43 (black) lands on A1.STOP1-V", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_serial_number_is_not_imported_twice()
    {
        var run = await imported.ImportAsync("P-1");

        Assert.Equal(2, run.Exit);
        Assert.Contains("P-1", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_is_a_page_and_a_PDF()
    {
        var run = await Run.OfAsync("report", "P-1", "--journal", imported.Journal, "--out", imported.Folder.At("records"));

        Assert.Equal((0, ""), (run.Exit, run.Complaints));
        Assert.Equal(
            ["pennywort-p-1.html", "pennywort-p-1.pdf"],
            Directory.EnumerateFiles(imported.Folder.At("records")).Select(Path.GetFileName).Order());
        Assert.Equal("%PDF"u8.ToArray(), (await File.ReadAllBytesAsync(imported.Folder.At("records/pennywort-p-1.pdf")))[..4]);
    }

    [Fact]
    public async Task A_report_that_cannot_be_written_leaves_nothing()
    {
        var place = imported.Folder.Write("taken", "a file where the folder should be");

        var run = await Run.OfAsync("report", "P-1", "--journal", imported.Journal, "--out", place);

        Assert.Equal(2, run.Exit);
        Assert.Equal("a file where the folder should be", await File.ReadAllTextAsync(place));
    }

    [Fact]
    public async Task A_record_as_it_was_written_is_whole()
    {
        var run = await Run.OfAsync("verify", "--all", "--journal", imported.Journal);

        Assert.Equal(0, run.Exit);
        Assert.Contains("Whole", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_that_was_changed_is_broken()
    {
        SqliteConnection.ClearAllPools();
        var bytes = await File.ReadAllBytesAsync(imported.Journal);
        var forged = imported.Folder.At("forged.db");
        await File.WriteAllBytesAsync(forged, Replace(bytes, "Mara Lindt", "Mara Lundt"));

        var run = await Run.OfAsync("verify", "P-1", "--journal", forged);

        Assert.Equal(1, run.Exit);
        Assert.Contains("Broken at entry 0", run.Output, StringComparison.Ordinal);
    }

    private static byte[] Replace(byte[] bytes, string what, string by)
    {
        var changed = bytes.ToArray();
        for (var from = 0; changed.AsSpan(from).IndexOf(Encoding.UTF8.GetBytes(what)) is var found and >= 0;)
        {
            Encoding.UTF8.GetBytes(by).CopyTo(changed, from + found);
            from += found;
        }

        return changed;
    }

    /// <summary>A journal with the readings of a sample as wired.</summary>
    public sealed class Imported : IAsyncLifetime
    {
        public TemporaryFolder Folder { get; } = new();

        public string Journal => Folder.At("journal.db");

        public Run Import { get; private set; } = null!;

        public async ValueTask InitializeAsync() => Import = await ImportAsync("P-1");

        public Task<Run> ImportAsync(string serial) => Run.OfAsync(
            "import-readings", "pennywort", "--readings", Path.Combine(Places.Samples, "pennywort-as-wired", "readings.txt"), "--serial", serial,
            "--builder", "Mara Lindt", "--journal", Journal);

        public ValueTask DisposeAsync()
        {
            Folder.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
