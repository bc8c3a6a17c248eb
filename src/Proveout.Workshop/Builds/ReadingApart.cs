namespace Proveout.Workshop;

/// <summary>A reading that does not belong to those of its sisters.</summary>
/// <param name="BuildId">The build.</param>
/// <param name="Serial">Its serial number.</param>
/// <param name="CheckId">The check.</param>
/// <param name="CheckTitle">The check in a few words.</param>
/// <param name="Shown">The reading with its unit.</param>
/// <param name="Deviations">Its distance from the median of all, in robust standard deviations that hold the meter's uncertainty; below 0 when it is low.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record ReadingApart(string BuildId, string Serial, string CheckId, string CheckTitle, string Shown, double Deviations, string Sentence);
