namespace Proveout.Web.Pages.Offline;

/// <summary>The page that stands in for one that was not kept: it says the same wherever it stands.</summary>
public sealed record OfflineView
{
    private OfflineView()
    {
    }

    /// <summary>The only one.</summary>
    public static OfflineView Only { get; } = new();
}
