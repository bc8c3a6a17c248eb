using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Says who may come in; for whoever sits at the bench's own terminal.</summary>
/// <param name="store">Where it is kept.</param>
/// <param name="clock">The clock.</param>
public sealed class PeopleDesk(IAccessStore store, TimeProvider clock)
{
    /// <summary>Most devices that one join code lets in.</summary>
    public const int MostDevices = 5;

    // Each costs a hash at every try of a code.
    private const int MostCodes = 5;

    /// <summary>People who may come in, by name, with how many devices each is signed in on.</summary>
    public IReadOnlyList<(KnownPerson Person, int Devices)> List()
    {
        var book = store.Read().Swept(clock.GetUtcNow());
        return [.. book.People.OrderBy(person => person.Name, StringComparer.OrdinalIgnoreCase).Select(person => (person, book.Sessions.Count(session => session.Person == person.Id)))];
    }

    /// <summary>Adds a person who signs in with a password.</summary>
    public Outcome<KnownPerson> Add(string name, AccessRole role, string password) =>
        !PersonName.IsOne(name) ? Refused(AccessRefusals.NoName(name))
        : PasswordRules.Against(password, name) is { } refusal ? Refused(refusal)
        : Add(name, role, () => PasswordHash.Make(password));

    /// <summary>Gives a person another role; it counts from the next page on.</summary>
    public Outcome<KnownPerson> SetRole(string name, AccessRole role) => Change(name, (book, person) =>
    {
        var changed = person with { Role = role };
        return (book.With(changed), changed);
    });

    /// <summary>Gives a person another password, and signs the person out everywhere.</summary>
    public Outcome<KnownPerson> SetPassword(string name, string password) =>
        PasswordRules.Against(password, name) is { } refusal ? Refused(refusal) : Change(name, (book, person) =>
        {
            var changed = person with { Password = PasswordHash.Make(password) };
            return (book.With(changed).ButOut(person.Id), changed);
        });

    /// <summary>Takes a person's second factor off, for somebody who lost it; it stays in the record of access.</summary>
    public Outcome<KnownPerson> TakeSecondFactorOff(string name) => store.Change(book =>
    {
        if (book.Find(name) is not { } person)
            return (book, Refused(AccessRefusals.NoSuchPerson(name)));
        if (person.Second is not { IsOn: true })
            return (book, Refused(AccessRefusals.NoSecondFactor(person.Name)));
        var without = person with { Second = null };
        return (book.With(without).ButOut(person.Id).Noting(without, AccessEvent.TakenOffAtBench, clock.GetUtcNow()), Outcome.Of(without));
    });

    /// <summary>What was done to second factors, the last first.</summary>
    public IReadOnlyList<AccessNote> Notes() => [.. store.Read().NotesOrNone.Reverse()];

    /// <summary>Takes a person out of the book; every device of the person is out at once.</summary>
    public Outcome<KnownPerson> Remove(string name) => Change(name, (book, person) => (book.Without(person.Id), person));

    /// <summary>Takes in the people of another book with their passwords, roles and second factors, and what was noted of them. Nobody is signed in by it.</summary>
    public TakenIn TakeIn(AccessBook other) => store.Change(book =>
    {
        var groups = other.People.ToLookup(person => book.Find(person.Name) is null && book.Find(person.Id) is null);
        // A key that waits for its first code waits there.
        var added = groups[true].Select(person => person.Second is { IsOn: true } ? person : person with { Second = null }).ToArray();
        var answer = new TakenIn(added, [.. groups[false]]);
        return added.Length == 0 ? (book, answer) : (book.With(added, other.NotesOrNone), answer);
    });

    /// <summary>Makes a join code for a person, who is added without a password when the name is new.</summary>
    /// <param name="name">Whose name stands on what is entered.</param>
    /// <param name="role">The role of someone new; null for someone known, whose role stays.</param>
    /// <param name="devices">How many devices it lets in, 1 to <see cref="MostDevices"/>.</param>
    /// <returns>The code, which is kept nowhere.</returns>
    public Outcome<string> Invite(string name, AccessRole? role, int devices)
    {
        if (!PersonName.IsOne(name))
            return Outcome.Refused<string>([AccessRefusals.NoName(name)]);
        if (role is { } given && store.Read().Find(name) is null)
            _ = Add(name, given, () => "");
        if (store.Read().Find(name) is not { } person)
            return Outcome.Refused<string>([AccessRefusals.NoSuchPerson(name)]);
        if (role is { } other && other != person.Role)
            return Outcome.Refused<string>([AccessRefusals.NameTaken(person.Name)]);
        var code = Secrets.NewCode();
        var kept = new JoinCode(PasswordHash.Make(Secrets.PlainCode(code)), person.Id, clock.GetUtcNow() + SessionTimes.JoinCode, Math.Clamp(devices, 1, MostDevices));
        return Outcome.Of(store.Change(book => (WithCode(book.Swept(clock.GetUtcNow()), kept), code)));
    }

    private Outcome<KnownPerson> Add(string name, AccessRole role, Func<string> password)
    {
        var person = new KnownPerson(Guid.NewGuid(), name.Trim(), role, password(), clock.GetUtcNow());
        return store.Change(book => book.Find(name) is { } known ? (book, Refused(AccessRefusals.NameTaken(known.Name))) : (book.With(person), Outcome.Of(person)));
    }

    private Outcome<KnownPerson> Change(string name, Func<AccessBook, KnownPerson, (AccessBook, KnownPerson)> change) => store.Change(book =>
    {
        if (book.Find(name) is not { } person)
            return (book, Refused(AccessRefusals.NoSuchPerson(name)));
        var (after, changed) = change(book, person);
        return (after, Outcome.Of(changed));
    });

    private static AccessBook WithCode(AccessBook book, JoinCode code) => book with { Codes = [.. book.Codes.TakeLast(MostCodes - 1), code] };

    private static Outcome<KnownPerson> Refused(Diagnostic diagnostic) => Outcome.Refused<KnownPerson>([diagnostic]);
}
