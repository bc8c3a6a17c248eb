namespace Proveout.Workshop;

/// <summary>A text and where it came from.</summary>
/// <param name="Name">Name of the file or of the field.</param>
/// <param name="Text">Its content.</param>
public sealed record NamedText(string Name, string Text);
