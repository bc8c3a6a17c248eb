using System.Text;

namespace Proveout.Engine.Machine;

/// <summary>Offending text as it is shown in a message: marked, on one line, not too long, without control characters.</summary>
public static class Quote
{
    private const int Longest = 60;

    /// <summary>The text between back-quotes.</summary>
    public static string Of(string text)
    {
        var shown = new StringBuilder("`", Math.Min(text.Length, Longest) + 3);
        foreach (var sign in text.AsSpan(0, Math.Min(text.Length, Longest)))
            shown.Append(char.IsControl(sign) || char.IsSurrogate(sign) || UnseenMarks.TurnsDirection(sign) ? '\uFFFD' : sign);
        return shown.Append(text.Length > Longest ? "…`" : "`").ToString();
    }
}
