namespace Proveout.Cli;

/// <summary>What the program ends with.</summary>
internal static class ExitCode
{
    /// <summary>Done, and nothing found wrong.</summary>
    public const int Fine = 0;

    /// <summary>Done, and something found: a fail, a finding, a broken chain.</summary>
    public const int Findings = 1;

    /// <summary>Not done: what was given cannot be used.</summary>
    public const int BadInput = 2;

    /// <summary>Not done: a mistake of the program itself.</summary>
    public const int Internal = 3;

    /// <summary>Ended by a signal from the keyboard: 128 and the signal's number, as shells have it (POSIX 2.8.2).</summary>
    public const int Interrupted = 130;
}
