namespace Proveout.Workshop;

/// <summary>Says what to look at of one side of a machine.</summary>
internal interface IAcceptanceSource
{
    /// <summary>The items; none when the machine has nothing of the kind.</summary>
    IEnumerable<AcceptanceItem> Of(AcceptanceCase machine);
}
