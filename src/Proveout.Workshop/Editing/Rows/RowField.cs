namespace Proveout.Workshop;

/// <summary>A field of a row in the editor.</summary>
/// <param name="Path">Keys from the thing to the field, blanks between.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Hint">How it is written; empty when that goes without saying.</param>
public sealed record RowField(string Path, string Label, string Hint)
{
    /// <summary>What a value is.</summary>
    public RowValue Kind { get; init; }

    /// <summary>The words that it may have; empty when it is typed.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What it may be chosen from while it is typed.</summary>
    public RowChoices Choices { get; init; }

    /// <summary>True when a thing is none without it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Its name in a form.</summary>
    public string Name => Path.Replace(' ', '.');
}
