namespace Proveout.Web;

/// <summary>What the bench writes to the error stream.</summary>
public enum LogShape
{
    /// <summary>What goes wrong, in lines for a person.</summary>
    OnlyTrouble,

    /// <summary>Start, stop and each request as well, in lines for a person.</summary>
    Plain,

    /// <summary>The same as one JSON object a line, for a program.</summary>
    Json,
}
