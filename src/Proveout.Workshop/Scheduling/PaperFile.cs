namespace Proveout.Workshop;

/// <summary>A file to work from on paper.</summary>
/// <param name="Name">Its name.</param>
/// <param name="MediaType">What it is, as RFC 6838 names it.</param>
/// <param name="Write">Writes its content and leaves the stream open.</param>
public sealed record PaperFile(string Name, string MediaType, Action<Stream> Write);
