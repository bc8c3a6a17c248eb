namespace Proveout.Workshop;

/// <summary>One build among its sisters.</summary>
/// <param name="Build">The build.</param>
/// <param name="Done">Checks of its plan that were read or left out.</param>
/// <param name="Planned">Checks of its plan.</param>
/// <param name="Failing">Checks whose last reading fails.</param>
/// <param name="Mistakes">Mistakes found in it and mended.</param>
/// <param name="Deviations">Deviations noted.</param>
/// <param name="Apart">Readings of it that stand out from those of its sisters.</param>
/// <param name="IsSigned">True when somebody has signed its record.</param>
/// <param name="IsOtherRevision">True when it was started from another revision of the machine file than the one at hand.</param>
/// <param name="LastEntry">When something was last entered.</param>
public sealed record BuildRow(
    BuildSummary Build, int Done, int Planned, int Failing, int Mistakes, int Deviations, int Apart, bool IsSigned, bool IsOtherRevision, DateTimeOffset LastEntry);
