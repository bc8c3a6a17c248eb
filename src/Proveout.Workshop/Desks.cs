namespace Proveout.Workshop;

/// <summary>What the pages work at: a desk for each use.</summary>
/// <param name="Bench">Walks builds through their check plans.</param>
/// <param name="Designs">Shows machines as designed.</param>
/// <param name="Receiving">Opens the parcel.</param>
/// <param name="Handover">Hands machines over to use.</param>
/// <param name="Books">Publishes machines and builds as books.</param>
/// <param name="Builds">Looks at many builds together.</param>
public sealed record Desks(IBench Bench, IDesignDesk Designs, IReceivingDesk Receiving, IHandoverDesk Handover, BookDesk Books, IBuildsDesk Builds)
{
    /// <summary>Writes the reports that the record's page offers; none are offered without it.</summary>
    public ReportCase? Reports { get; init; }

    /// <summary>Keeps measurements; none are kept without it.</summary>
    public IMeasuringDesk? Measuring { get; init; }

    /// <summary>Changes machines; none are changed without it.</summary>
    public IEditDesk? Editing { get; init; }

    /// <summary>Begins machines from what a builder knows; none are begun without it.</summary>
    public StartDesk? Starting { get; init; }

    /// <summary>Keys of forms that several servers share; each has its own without them.</summary>
    public FormKeys? FormKeys { get; init; }

    /// <summary>Looks whether the bench can work; nobody can ask without it.</summary>
    public IHealthDesk? Health { get; init; }
}
