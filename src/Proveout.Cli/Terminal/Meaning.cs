namespace Proveout.Cli;

/// <summary>What a colour stands for. Words always say the same.</summary>
internal enum Meaning
{
    /// <summary>No colour.</summary>
    Plain,

    /// <summary>As it should be.</summary>
    Good,

    /// <summary>Not as it should be.</summary>
    Bad,

    /// <summary>Something can hurt (yellow as in ISO 3864-1).</summary>
    Caution,
}
