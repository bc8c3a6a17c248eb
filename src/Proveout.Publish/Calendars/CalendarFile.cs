using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Proveout.Publish.Calendars;

/// <summary>Writes days as a calendar that any program takes, RFC 5545.</summary>
public static class CalendarFile
{
    /// <summary>Writes the file; equal input gives equal output.</summary>
    /// <param name="days">What is due.</param>
    /// <param name="written">Day that stands as that of writing.</param>
    /// <param name="to">Where it goes; left open.</param>
    public static void Write(IEnumerable<CalendarDay> days, DateOnly written, Stream to)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(to);
        var calendar = new Calendar { ProductId = "-//Proveout//Maintenance//EN" };
        calendar.Events.AddRange(days.Select(day => EventOf(day, written)));
        to.Write(Encoding.UTF8.GetBytes(new CalendarSerializer().SerializeToString(calendar) ?? ""));
    }

    private static CalendarEvent EventOf(CalendarDay day, DateOnly written)
    {
        var due = new CalendarEvent
        {
            Uid = $"{day.Id}@proveout.invalid",
            DtStamp = new CalDateTime(written.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc)),
            Start = new CalDateTime(day.Day),
            Summary = PlainText.Clean(day.Title),
            Description = string.Join('\n', day.Text.Split('\n').Select(PlainText.Clean)),
        };
        if (day.EveryDays > 0)
            due.RecurrenceRule = new RecurrenceRule(FrequencyType.Daily, day.EveryDays);
        return due;
    }
}
