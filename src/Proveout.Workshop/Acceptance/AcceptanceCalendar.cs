using Proveout.Publish.Calendars;

namespace Proveout.Workshop;

/// <summary>Puts what is looked at again into a calendar.</summary>
public static class AcceptanceCalendar
{
    private const int YearDays = 365;

    /// <summary>A file of a day for each phase that comes after some hours of work.</summary>
    /// <param name="view">The list.</param>
    /// <param name="first">Day of the first run.</param>
    /// <param name="hoursAWeek">How long the machine works in a week; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The machine never works.</exception>
    public static PaperFile Of(AcceptanceView view, DateOnly first, double hoursAWeek)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hoursAWeek);
        CalendarDay[] days =
        [
            .. from item in view.Items
               where Hours(item.Phase) > 0
               group item by item.Phase into phase
               let every = Days(Hours(phase.Key), hoursAWeek, phase.Key == AcceptancePhase.Yearly)
               select new CalendarDay(
                   $"{AcceptanceWords.Id(phase.Key)}-{view.Fingerprint[..Math.Min(12, view.Fingerprint.Length)]}",
                   first.AddDays(every),
                   phase.Key >= AcceptancePhase.EveryFiftyHours ? every : 0,
                   $"{view.Machine.Name}: {AcceptanceWords.Of(phase.Key).ToLowerInvariant()}",
                   string.Join("\n", [.. AcceptanceView.CautionsOf(phase.Key), .. phase.Select(item => $"{item.Title}. {item.Instruction} Good: {item.Good}")])),
        ];
        return new("calendar.ics", "text/calendar; charset=utf-8", stream => CalendarFile.Write(days, first, stream));
    }

    // Rounded down to whole days, so that it is looked at rather too soon; at least a day after the first run.
    private static int Days(double hours, double hoursAWeek, bool onceAYear)
    {
        var days = Math.Max(1, Math.Floor(Math.Min(hours / hoursAWeek * 7, YearDays * 10.0)));
        return (int)(onceAYear ? Math.Min(days, YearDays) : days);
    }

    private static double Hours(AcceptancePhase phase) => phase switch
    {
        AcceptancePhase.AfterAnHour => 1,
        AcceptancePhase.AfterTenHours => 10,
        AcceptancePhase.EveryFiftyHours => 50,
        AcceptancePhase.Yearly => 250,
        _ => 0,
    };
}
