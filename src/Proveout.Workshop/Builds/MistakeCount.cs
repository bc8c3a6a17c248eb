namespace Proveout.Workshop;

/// <summary>How often one mistake was found in the builds of a machine.</summary>
/// <param name="Kind">Kind of fault.</param>
/// <param name="Sentence">The mistake made most often of this kind, in a sentence.</param>
/// <param name="Builds">Builds in which one of this kind was found.</param>
/// <param name="Found">How many were found in all.</param>
public sealed record MistakeCount(string Kind, string Sentence, int Builds, int Found);
