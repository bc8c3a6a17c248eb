using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Something that a person sees in use, with every way in which it can be seen.</summary>
/// <param name="CheckId">The symptom's identifier in the campaign.</param>
/// <param name="Question">What to look at.</param>
/// <param name="Outcomes">What can be seen, the sound machine's first.</param>
public sealed record SeenQuestion(string CheckId, string Question, ValueList<SeenOutcome> Outcomes)
{
    /// <summary>The question with its numbered answers.</summary>
    internal string Instruction => $"{Question} {string.Join("; ", Outcomes.Select(outcome => string.Create(CultureInfo.InvariantCulture, $"{outcome.Value:0} {outcome.Words}")))}.";
}

/// <summary>One way in which it can be seen.</summary>
/// <param name="Value">Its number in the campaign.</param>
/// <param name="Words">What is seen, in a few words that say it without the question.</param>
public sealed record SeenOutcome(double Value, string Words);
