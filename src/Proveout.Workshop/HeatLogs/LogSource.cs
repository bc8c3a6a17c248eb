namespace Proveout.Workshop;

/// <summary>Where a log comes from. It is read as it comes in, for it may be long.</summary>
/// <param name="Name">Name of the file or of the field.</param>
/// <param name="Open">Opens it.</param>
public sealed record LogSource(string Name, Func<TextReader> Open)
{
    /// <summary>A text that is at hand.</summary>
    public static LogSource Of(NamedText text) => new((text ?? throw new ArgumentNullException(nameof(text))).Name, () => new StringReader(text.Text));
}
