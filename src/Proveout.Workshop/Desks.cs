namespace Proveout.Workshop;

/// <summary>What the pages work at: a desk for each use.</summary>
/// <param name="Bench">Walks builds through their check plans.</param>
/// <param name="Designs">Shows machines as designed.</param>
/// <param name="Receiving">Opens the parcel.</param>
/// <param name="Handover">Hands machines over to use.</param>
/// <param name="Builds">Looks at many builds together.</param>
/// <param name="Reports">Writes the reports that the record's page offers; none are offered without it.</param>
/// <param name="Measuring">Keeps measurements; none are kept without it.</param>
public sealed record Desks(
    IBench Bench, IDesignDesk Designs, IReceivingDesk Receiving, IHandoverDesk Handover, IBuildsDesk Builds, ReportCase? Reports = null, IMeasuringDesk? Measuring = null);
