namespace Proveout.Workshop;

/// <summary>What the value of a field is.</summary>
public enum RowValue
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>Several texts, with commas between.</summary>
    List,

    /// <summary>Yes or no.</summary>
    Flag,
}
