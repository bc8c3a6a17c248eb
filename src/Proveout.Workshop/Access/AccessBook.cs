using System.Text.Json.Serialization;

namespace Proveout.Workshop;

/// <summary>Who may come in, and who is in.</summary>
/// <param name="People">People who may sign in.</param>
/// <param name="Codes">Join codes that were shown.</param>
/// <param name="Sessions">Devices that are signed in.</param>
public sealed record AccessBook(IReadOnlyList<KnownPerson> People, IReadOnlyList<JoinCode> Codes, IReadOnlyList<AccessSession> Sessions)
{
    private const int MostNotes = 500;

    /// <summary>Nobody.</summary>
    public static AccessBook Empty { get; } = new([], [], []);

    /// <summary>What was done to ways in, the last at the end; null in a file of before there were any.</summary>
    public IReadOnlyList<AccessNote>? Notes { get; init; }

    /// <summary>What was done to ways in, the last at the end.</summary>
    [JsonIgnore]
    public IReadOnlyList<AccessNote> NotesOrNone => Notes ?? [];

    /// <summary>Whether anybody has to show a second factor, so that the way in has a field for it.</summary>
    [JsonIgnore]
    public bool AsksForCodes => People.Any(person => person.Second is { IsOn: true });

    /// <summary>The person of a name, or null.</summary>
    public KnownPerson? Find(string name) => People.FirstOrDefault(person => person.IsCalled(name));

    /// <summary>The person of an identifier, or null.</summary>
    public KnownPerson? Find(Guid id) => People.FirstOrDefault(person => person.Id == id);

    /// <summary>The book without codes and sessions that have ended, or whose person is gone.</summary>
    public AccessBook Swept(DateTimeOffset now) => this with
    {
        Codes = [.. Codes.Where(code => code.Until > now && code.DevicesLeft > 0 && Find(code.Person) is not null)],
        Sessions = [.. Sessions.Where(session => session.HoldsAt(now) && Find(session.Person) is not null)],
    };

    /// <summary>The book with a person in the place of what the book knew under that identifier.</summary>
    public AccessBook With(KnownPerson person) => this with { People = [.. People.Where(other => other.Id != person.Id), person] };

    /// <summary>The book with people it did not have, and with those of the notes that are of them.</summary>
    public AccessBook With(IReadOnlyList<KnownPerson> people, IReadOnlyList<AccessNote> notes) => this with
    {
        People = [.. People, .. people],
        Notes = [.. NotesOrNone.Concat(notes.Where(note => people.Any(person => person.Id == note.Person))).OrderBy(note => note.When).TakeLast(MostNotes)],
    };

    /// <summary>The book with a note of what was done; the oldest of very many go.</summary>
    public AccessBook Noting(KnownPerson person, AccessEvent what, DateTimeOffset when) =>
        this with { Notes = [.. NotesOrNone.TakeLast(MostNotes - 1), new AccessNote(when, person.Id, person.Name, what)] };

    /// <summary>The book after a wrong code of a person's second factor. Whoever types code after code has the password or a join code already; nothing typed is no try.</summary>
    public AccessBook Missing(KnownPerson person, string code, DateTimeOffset when)
    {
        if (code.Length == 0 || person.Second is not { Misses: < SecondFactor.MostMisses } second)
            return this;
        var after = With(person with { Second = second with { Misses = second.Misses + 1 } });
        return second.Misses + 1 < SecondFactor.MostMisses ? after : after.Noting(person, AccessEvent.Guessed, when);
    }

    /// <summary>The book without a person, and without the sessions and codes of that person.</summary>
    public AccessBook Without(Guid person) => ButOut(person) with { People = [.. People.Where(other => other.Id != person)] };

    /// <summary>The book with a person signed out everywhere.</summary>
    public AccessBook ButOut(Guid person) => this with
    {
        Codes = [.. Codes.Where(code => code.Person != person)],
        Sessions = [.. Sessions.Where(session => session.Person != person)],
    };
}
