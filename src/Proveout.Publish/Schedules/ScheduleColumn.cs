namespace Proveout.Publish.Schedules;

/// <summary>A column of a schedule.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Share">Its share of the width on paper; any positive number.</param>
public sealed record ScheduleColumn(string Heading, double Share = 1);
