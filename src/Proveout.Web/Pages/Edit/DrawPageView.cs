using Proveout.Engine.Machine;
using Proveout.Web.Hosting;

namespace Proveout.Web.Pages.Edit;

/// <summary>The terminals of a part, to be tapped.</summary>
/// <param name="Page">The machine.</param>
/// <param name="Part">The part whose terminals are shown; null when none is chosen yet.</param>
/// <param name="From">The terminal that was tapped first; empty when none was.</param>
public sealed record DrawPageView(EditPageView Page, Part? Part, string From)
{
    public string Id => Page.Id;

    /// <summary>Where a terminal leads: to the choice of the other end, or, when it is the other, to the form of the new conductor.</summary>
    public string TargetOf(string part, string terminal) => From.Length == 0
        ? Addresses.EditDraw(Id, part, terminal)
        : Addresses.EditNew(Id, EditedThing.Conductors, From, terminal);
}
