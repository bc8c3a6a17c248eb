using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The address that a join code is sent to, and the square code of it.</summary>
public static class JoinAddress
{
    /// <summary>The address of the join page of a bench, with the code filled in; null when the text is no address of a bench.</summary>
    public static string? Of(string bench, string code) =>
        Uri.TryCreate(bench, UriKind.Absolute, out var address) && address.Scheme is "http" or "https" && address.UserInfo.Length == 0
            ? new Uri(address, $"/join?code={Uri.EscapeDataString(code)}").ToString()
            : null;

    /// <summary>A square code in lines of characters, two rows of it in each. What is light is drawn, because most terminals are dark.</summary>
    public static IReadOnlyList<string> SquareLines(string text)
    {
        var rows = SquareCode.Of(text);
        return [.. rows.Chunk(2).Select(pair => string.Concat(pair[0].Select((dark, column) => Half(!dark, pair.Length < 2 || !pair[1][column]))))];
    }

    private static char Half(bool upper, bool lower) => (upper, lower) switch
    {
        (true, true) => '█',
        (true, false) => '▀',
        (false, true) => '▄',
        _ => ' ',
    };
}
