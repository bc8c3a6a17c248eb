using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>A mistake with a heater or its sensor, and the heater that it leaves.</summary>
/// <param name="Id">Identifier; lower case with hyphens.</param>
/// <param name="Sentence">What is wrong, in a sentence.</param>
/// <param name="Severity">What it does.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="Prior">Probability that a careful builder makes it, common practice.</param>
/// <param name="OtherEvidence">What else shows it.</param>
/// <param name="Left">The heater that it leaves.</param>
internal sealed record HeaterMistake(string Id, string Sentence, Severity Severity, string Consequence, double Prior, string OtherEvidence, HeaterDesign Left)
{
    /// <summary>Its kind: of one kind only one mistake is made at a time.</summary>
    public string Kind { get; init; } = Id;

    /// <summary>True when it heats at full power though told not to.</summary>
    public bool HeatsWhenOff { get; init; }

    /// <summary>True when this channel shows another body, and another channel shows this one.</summary>
    public bool IsSeenElsewhere { get; init; }
}
