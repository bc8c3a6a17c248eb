using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>A page of the editor.</summary>
/// <param name="Edit">The machine.</param>
/// <param name="Person">Who sits at the browser, as far as known.</param>
/// <param name="Refusal">A form that was not taken.</param>
public sealed record EditPageView(EditView Edit, string Person, Refusal? Refusal)
{
    /// <summary>What somebody else changed meanwhile.</summary>
    public IReadOnlyList<EditConflict> Conflicts { get; init; } = [];

    /// <summary>Number of the revision that a form of the page is made on.</summary>
    public int Base { get; init; }

    public string Id => Edit.Machine.Id;
}
