namespace Proveout.Workshop;

/// <summary>What a face adds to a result that it keeps.</summary>
/// <param name="Title">What was measured, in a few words; empty for the name of the analysis.</param>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="Files">Data files, the most telling first.</param>
/// <param name="Person">Who measured.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record KeepRequest(string Title, IReadOnlyDictionary<string, string> Typed, IReadOnlyList<MeasuredFile> Files, string Person, Guid Key);
