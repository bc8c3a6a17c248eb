namespace Proveout.Publish.Report;

/// <summary>What a document says of itself.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Name">At the left of the head of every page: what it is about.</param>
/// <param name="Which">At the right of the head: which one; empty when there is one only.</param>
/// <param name="Author">Who made it; empty when nobody is named.</param>
/// <param name="Identity">At the foot of every page: what identifies its content.</param>
/// <param name="Written">Moment that it bears.</param>
internal sealed record BookTitle(string Title, string Name, string Which, string Author, string Identity, DateTimeOffset Written);
