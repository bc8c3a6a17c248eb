namespace Proveout.Journal;

/// <summary>How large a journal is.</summary>
/// <param name="Builds">How many builds it has.</param>
/// <param name="Entries">How many entries all of them have together.</param>
public readonly record struct JournalSize(long Builds, long Entries);
