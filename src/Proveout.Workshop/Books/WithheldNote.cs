namespace Proveout.Workshop;

/// <summary>A free text of the record that was left out of a book.</summary>
/// <param name="Sequence">Entry number.</param>
/// <param name="Why">Why, in a sentence.</param>
/// <param name="CanBeLetIn">True when the author may let it in after reading it; false when it surely names a person or the build.</param>
public sealed record WithheldNote(long Sequence, string Why, bool CanBeLetIn);
