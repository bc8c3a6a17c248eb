using Proveout.Publish.Schedules;
using UglyToad.PdfPig;

namespace Proveout.Publish.Tests.Schedules;

public sealed class PdfWordTests
{
    [Fact]
    public void A_word_in_a_narrow_column_is_broken_behind_its_hyphen_and_not_inside()
    {
        using var file = new MemoryStream();
        ScheduleColumn[] columns = [new("What", 0.5), .. Enumerable.Repeat(new ScheduleColumn("Do", 3), 5), new("Done", 0.1)];
        Schedule schedule = new("list", "List", "All of it.", columns, [["Residual-current device", .. Enumerable.Repeat("Look at it, and look again.", 5), Schedule.Box]]);
        PdfSchedules.Write(new("Hill bench", "", "0", [], [schedule], []), DateTimeOffset.UnixEpoch, file);

        using var document = PdfDocument.Open(file.ToArray());
        var page = document.GetPage(1);
        string[] words = [.. page.GetWords().Select(word => word.Text)];
        Assert.Contains("Residual-", words);
        Assert.Contains("current", words);
        Assert.Contains("Done", words);
        Assert.True(page.GetWords().Single(word => word.Text == "Done").BoundingBox.Right < page.Width - 45 - 4);
    }
}
