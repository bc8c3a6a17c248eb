using System.Text;
using Proveout.Publish.Calendars;

namespace Proveout.Publish.Tests.Calendars;

/// <summary>Held against the text of RFC 5545, not against the library that writes it.</summary>
public sealed class CalendarFileTests
{
    private static readonly DateOnly Written = new(2026, 12, 1);

    private static string Write(params CalendarDay[] days)
    {
        using var content = new MemoryStream();
        CalendarFile.Write(days, Written, content);
        return Encoding.UTF8.GetString(content.ToArray());
    }

    [Fact]
    public void Lines_end_with_carriage_return_and_line_feed_and_have_at_most_75_octets()
    {
        // RFC 5545 section 3.1.
        var text = Write(new CalendarDay("a", new(2026, 12, 8), 0, "Überprüfung der Schrauben", new string('ä', 400)));

        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
    }

    [Fact]
    public void Commas_semicolons_backslashes_and_line_breaks_are_escaped()
    {
        // RFC 5545 section 3.3.11.
        var text = Write(new CalendarDay("a", new(2026, 12, 8), 0, "One, two; three\\four", "first\nsecond"));

        Assert.Contains("SUMMARY:One\\, two\\; three\\\\four\r\n", text, StringComparison.Ordinal);
        Assert.Contains("DESCRIPTION:first\\nsecond\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_day_that_comes_again_says_so()
    {
        // RFC 5545 sections 3.3.4 and 3.3.10.
        var text = Write(new CalendarDay("a", new(2026, 12, 8), 35, "Again", ""));

        Assert.Contains("DTSTART;VALUE=DATE:20261208\r\n", text, StringComparison.Ordinal);
        Assert.Contains("RRULE:FREQ=DAILY;INTERVAL=35\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_cannot_end_its_entry_and_begin_another()
    {
        var text = Write(new CalendarDay("a", new(2026, 12, 8), 0, "x\r\nEND:VEVENT\r\nBEGIN:VALARM", "y\r\nEND:VCALENDAR"));

        Assert.Single(text.Split("\r\n"), line => line == "END:VEVENT");
        Assert.Single(text.Split("\r\n"), line => line == "END:VCALENDAR");
        Assert.DoesNotContain(text.Split("\r\n"), line => line == "BEGIN:VALARM");
    }

    [Fact]
    public void Equal_days_give_equal_files()
    {
        var day = new CalendarDay("a", new(2026, 12, 8), 35, "Again", "Text");

        Assert.Equal(Write(day), Write(day));
    }
}
