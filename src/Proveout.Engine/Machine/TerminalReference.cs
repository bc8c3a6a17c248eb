namespace Proveout.Engine.Machine;

/// <summary>Names one terminal of a machine, written <c>A1.HEAT0+</c>: the part's designation, a full stop, the terminal's name.</summary>
/// <param name="Part">The part's reference designation (IEC 81346-2 letter and number).</param>
/// <param name="Terminal">The terminal's name on that part.</param>
public readonly record struct TerminalReference(string Part, string Terminal)
{
    /// <summary>Splits text at its first full stop; null when either side is empty or there is no full stop.</summary>
    public static TerminalReference? TryParse(string text)
    {
        var stop = text.IndexOf('.', StringComparison.Ordinal);
        return stop > 0 && stop < text.Length - 1 ? new TerminalReference(text[..stop], text[(stop + 1)..]) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Part}.{Terminal}";
}
