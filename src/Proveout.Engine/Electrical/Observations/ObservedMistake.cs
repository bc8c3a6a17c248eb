using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A mistake that no reading of a dead machine shows.</summary>
/// <param name="Kind">Kind of fault, lower case with hyphens.</param>
/// <param name="Words">The kind in plain words, plural.</param>
/// <param name="Prior">Probability that a careful builder makes it at one place in one build; order of magnitude from memory.</param>
/// <param name="Severity">What it does at worst.</param>
/// <param name="Sentence">What is wrong, with <c>{0}</c> for the thing.</param>
/// <param name="Consequence">What follows, in a sentence.</param>
/// <param name="Applies">Whether a thing can have it; null when every one can.</param>
internal sealed record ObservedMistake(
    string Kind, string Words, double Prior, Severity Severity, string Sentence, string Consequence, Func<Site, bool>? Applies = null);
