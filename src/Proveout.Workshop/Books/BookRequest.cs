namespace Proveout.Workshop;

/// <summary>What an author says of the book that is to be published.</summary>
/// <param name="Licence">An SPDX identifier or a text of the author's own; empty when all rights are kept.</param>
/// <param name="Credits">Whom or what it owes something to, a line each.</param>
/// <param name="WithNames">True when names of people, serial number and times may go in.</param>
/// <param name="Notes">Entries whose free text the author has read and lets go in, although a word of it could be a name.</param>
public sealed record BookRequest(string Licence, IReadOnlyList<string> Credits, bool WithNames, IReadOnlyList<long> Notes)
{
    /// <summary>Nothing said: all rights kept, nobody named.</summary>
    public static BookRequest Plain { get; } = new("", [], WithNames: false, []);
}
