namespace Proveout.Workshop;

/// <summary>Keeps one copy of each of a few texts that come again and again.</summary>
internal sealed class SharedTexts
{
    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);

    /// <summary>The copy that is kept of a text.</summary>
    public string Of(string text)
    {
        if (_texts.TryGetValue(text, out var kept))
            return kept;
        _texts.Add(text);
        return text;
    }
}
