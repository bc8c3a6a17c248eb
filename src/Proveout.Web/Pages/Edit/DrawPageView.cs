using Proveout.Engine.Machine;

namespace Proveout.Web.Pages.Edit;

/// <summary>The terminals of a part, to be tapped.</summary>
/// <param name="Page">The machine.</param>
/// <param name="Part">The part whose terminals are shown; null when none is chosen yet.</param>
/// <param name="From">The terminal that was tapped first; empty when none was.</param>
public sealed record DrawPageView(EditPageView Page, Part? Part, string From)
{
    public string Id => Page.Id;
}
