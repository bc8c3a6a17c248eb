using Proveout.Engine.Machine;

namespace Proveout.Web.Pages.Edit;

/// <summary>The text of one of a machine's files.</summary>
/// <param name="Page">The machine.</param>
/// <param name="File">Name of the file.</param>
/// <param name="Text">Its text, as it is or as it was typed.</param>
/// <param name="Draft">Number of the draft that it goes on from; 0 when it goes on from none.</param>
/// <param name="Problems">What keeps it from being the machine's file.</param>
public sealed record EditFilePageView(EditPageView Page, string File, string Text, int Draft, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>True when the text was just kept as a draft.</summary>
    public bool IsKept { get; init; }

    public string Id => Page.Id;

    /// <summary>A line of the text; empty when it has none of that number.</summary>
    public string Line(int number) => Text.Split('\n').ElementAtOrDefault(number - 1)?.TrimEnd('\r') ?? "";
}
