using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>A section's table with the form of one row.</summary>
/// <param name="Page">The machine.</param>
/// <param name="Section">The section.</param>
/// <param name="Table">Its rows; null for the machine's head, which is one row.</param>
/// <param name="Row">Name of the row whose form is open; empty when none is, or a new one.</param>
/// <param name="IsNew">True when the form is that of a new row.</param>
/// <param name="Given">What the form's fields hold before anything is typed.</param>
/// <param name="Find">What the rows were searched for.</param>
/// <param name="From">Number of the first row shown.</param>
public sealed record RowPageView(
    EditPageView Page, string Section, EditTable? Table, string Row, bool IsNew, IReadOnlyDictionary<string, string> Given, string Find, int From)
{
    /// <summary>Rows of one page: with more, a page would be too heavy for a phone.</summary>
    public const int RowsShown = 150;

    /// <summary>True when a row was saved just now.</summary>
    public bool IsSaved { get; init; }

    public bool HasForm => IsNew || Row.Length > 0 || Table is null;

    public string Id => Page.Id;
}
