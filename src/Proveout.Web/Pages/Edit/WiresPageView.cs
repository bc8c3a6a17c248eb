using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>A wire list, out and in.</summary>
/// <param name="Page">The machine.</param>
/// <param name="List">The list that was sent; null when none was.</param>
/// <param name="RemoveUnlisted">True when conductors that are not in it are taken out.</param>
/// <param name="Import">What it would change; null when it cannot be used.</param>
public sealed record WiresPageView(EditPageView Page, NamedText? List, bool RemoveUnlisted, WireImport? Import)
{
    public string Id => Page.Id;
}
