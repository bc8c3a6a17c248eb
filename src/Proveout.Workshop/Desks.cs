namespace Proveout.Workshop;

/// <summary>What the pages work at: a desk for each use.</summary>
/// <param name="Bench">Walks builds through their check plans.</param>
/// <param name="Designs">Shows machines as designed.</param>
/// <param name="Receiving">Opens the parcel.</param>
/// <param name="Handover">Hands machines over to use.</param>
/// <param name="Books">Publishes machines and builds as books.</param>
/// <param name="Reports">Writes the reports that the record's page offers; none are offered without it.</param>
/// <param name="Measuring">Keeps measurements; none are kept without it.</param>
/// <param name="Editing">Changes machines; none are changed without it.</param>
public sealed record Desks(
    IBench Bench,
    IDesignDesk Designs,
    IReceivingDesk Receiving,
    IHandoverDesk Handover,
    BookDesk Books,
    ReportCase? Reports = null,
    IMeasuringDesk? Measuring = null,
    IEditDesk? Editing = null);
