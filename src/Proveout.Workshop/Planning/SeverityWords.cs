using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Severities in words.</summary>
public static class SeverityWords
{
    /// <summary>The severity in a word or two.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Shock => "electric shock",
        Severity.Fire => "fire",
        Severity.Damage => "damage",
        Severity.DoesNotWork => "does not work",
        _ => "hidden",
    };
}
