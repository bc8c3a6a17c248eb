namespace Proveout.Engine.Machine;

/// <summary>What a machine says of one kind of mistake.</summary>
/// <param name="Kind">The kind, as in <see cref="MistakeKinds"/>.</param>
/// <param name="Prior">Probability of each mistake of this kind in one build, above 0 and below 1; null when the kind is switched off.</param>
public sealed record MistakeSetting(string Kind, double? Prior);
