namespace Proveout.Publish.Calendars;

/// <summary>Something that is due on a day.</summary>
/// <param name="Id">Identifier, unique in the world as far as possible.</param>
/// <param name="Day">The day.</param>
/// <param name="EveryDays">Comes again after so many days; 0 for once.</param>
/// <param name="Title">A few words.</param>
/// <param name="Text">What to do.</param>
public sealed record CalendarDay(string Id, DateOnly Day, int EveryDays, string Title, string Text);
