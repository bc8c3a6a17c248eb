namespace Proveout.Web.Pages.Book;

/// <summary>What the page shows that hands out a book.</summary>
/// <param name="Name">The machine, or the build.</param>
/// <param name="Address">Address of the page; the book is beside it.</param>
/// <param name="IsOfBuild">True when the book tells of a build.</param>
/// <param name="Licence">What was typed as licence.</param>
/// <param name="Credit">What was typed as credit.</param>
/// <param name="WithNames">True when names may go in.</param>
/// <param name="Problems">Why no book was handed out, a sentence each; empty when none was asked for.</param>
public sealed record BookView(string Name, string Address, bool IsOfBuild, string Licence, string Credit, bool WithNames, IReadOnlyList<string> Problems);
