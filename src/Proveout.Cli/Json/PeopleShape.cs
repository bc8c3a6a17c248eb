using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Who may sign in.</summary>
internal sealed record PeopleShape(string Format, IReadOnlyList<PersonShape> People);

/// <summary>A person; nothing of the password.</summary>
internal sealed record PersonShape(string Name, string Role, bool HasPassword, bool HasSecondFactor, DateTimeOffset Added, int Devices)
{
    public static PersonShape Of(KnownPerson person, int devices) => new(person.Name, RolePolicy.Word(person.Role), person.Password.Length > 0, person.Second is { IsOn: true }, person.Added, devices);
}

/// <summary>What was done to second factors, the last first.</summary>
internal sealed record AccessNotesShape(string Format, IReadOnlyList<AccessNoteShape> Notes);

/// <summary>One thing that was done.</summary>
internal sealed record AccessNoteShape(DateTimeOffset When, string Name, string What)
{
    public static AccessNoteShape Of(AccessNote note) => new(note.When, note.Name, AccessEventWords.Of(note.Event));
}

/// <summary>A join code.</summary>
internal sealed record JoinShape(string Format, string Code, string? Address, int Seconds, int Devices);
