namespace Proveout.Cli;

/// <summary>Asks for a new password, twice where it is typed, so that a slip does not lock the person out.</summary>
internal static class PasswordPrompt
{
    /// <summary>The password; null when there is none, or the two differ.</summary>
    public static async Task<string?> AskTwiceAsync(Terminal terminal, CancellationToken cancellation)
    {
        var first = await terminal.AskSecretAsync("Password, 15 characters at least: ", cancellation);
        if (first is null || !terminal.IsTyped)
            return first;
        return await terminal.AskSecretAsync("The same again: ", cancellation) == first ? first : null;
    }

    public static int Refuse(Terminal terminal, bool asJson) =>
        terminal.Refuse("no-password", "password", "No password was typed, or the two differ.", "Start the command again, and type the same password twice.", asJson);
}
