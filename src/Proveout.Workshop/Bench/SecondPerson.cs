using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>A checker is a second person: who made an entry in a record cannot sign it off as its checker.</summary>
internal static class SecondPerson
{
    private static readonly string Checker = RolePolicy.Word(AccessRole.Checker);

    /// <summary>Why this signature is not taken; null when it is. A signature is no entry in this sense, so that a checker may sign again after a change.</summary>
    public static Diagnostic? Against(SignOffRequest request, IReadOnlyList<Entry> entries) =>
        IsChecker(request.Role) && entries.FirstOrDefault(entry => entry.Content is not SignedOff && PersonName.Same(entry.Person, request.Person)) is { } own
            ? Refusals.OwnEntries(own.Person)
            : null;

    /// <summary>Whether a signature was given in the role of the second person.</summary>
    public static bool IsChecker(string role) => string.Equals(role.Trim(), Checker, StringComparison.OrdinalIgnoreCase);
}
