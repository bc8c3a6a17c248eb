namespace Proveout.Engine.Faults;

/// <summary>What was found of the pairs of one fault.</summary>
/// <param name="Caught">Pairs of two faults that are not caught alone and are caught together.</param>
/// <param name="Masked">Masked pairs.</param>
internal readonly record struct PairRow(int Caught, IReadOnlyList<MaskedPair> Masked);
