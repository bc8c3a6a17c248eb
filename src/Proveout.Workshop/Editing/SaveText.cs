namespace Proveout.Workshop;

/// <summary>Asks for the text of one of a machine's files to be saved.</summary>
/// <param name="Base">Number of the revision that the text was begun from.</param>
/// <param name="File">Name of the file.</param>
/// <param name="Text">Its whole text.</param>
/// <param name="Draft">Number of the draft that it goes on from; 0 when it goes on from none.</param>
/// <param name="Person">Who saves.</param>
public sealed record SaveText(int Base, string File, string Text, int Draft, string Person);
