namespace Proveout.Workshop;

/// <summary>A row of a section.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cells">What stands in the other columns.</param>
/// <param name="Findings">How many findings of the review are about it.</param>
public sealed record EditRow(string Name, IReadOnlyList<string> Cells, int Findings);
