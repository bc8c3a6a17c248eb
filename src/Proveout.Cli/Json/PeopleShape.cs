using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Who may sign in.</summary>
internal sealed record PeopleShape(string Format, IReadOnlyList<PersonShape> People);

/// <summary>A person; nothing of the password.</summary>
internal sealed record PersonShape(string Name, string Role, bool HasPassword, DateTimeOffset Added, int Devices)
{
    public static PersonShape Of(KnownPerson person, int devices) => new(person.Name, RolePolicy.Word(person.Role), person.Password.Length > 0, person.Added, devices);
}

/// <summary>A join code.</summary>
internal sealed record JoinShape(string Format, string Code, string? Address, int Seconds, int Devices);
