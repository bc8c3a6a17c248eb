using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Lets people in, by password or join code, and knows who is in.</summary>
/// <param name="store">Who may come in.</param>
/// <param name="limits">Slows down who tries.</param>
/// <param name="clock">The clock.</param>
public sealed class SignInDesk(IAccessStore store, IAttemptLimits limits, TimeProvider clock)
{
    // Tries of codes are counted together, because a code names nobody.
    private const string AnyCode = "";

    private readonly PersonProof _proof = new(store, limits, clock);

    /// <summary>Whether the way in has to have a field for a second factor.</summary>
    public bool AsksForCodes => store.Read().AsksForCodes;

    /// <summary>Signs a person in with a password and, where the person has put one on, a second factor.</summary>
    /// <param name="name">The name.</param>
    /// <param name="password">The password.</param>
    /// <param name="code">A one-time code or a code on paper; of no account for who has no second factor.</param>
    /// <param name="caller">Where the try is from.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<Outcome<Admittance>> SignInAsync(string name, string password, string code, Caller caller, CancellationToken cancellation)
    {
        var proven = await _proof.TryAsync(name, password, code, caller.Address, cancellation);
        if (proven.Value is not { } person)
            return Outcome.Refused<Admittance>(proven.Diagnostics);
        return store.Change(book => book.Find(person.Id) is { } still && still.Password == person.Password
            ? Admit(book, still, caller)
            : (book, Refused(AccessRefusals.WrongPassword(book.AsksForCodes))));
    }

    /// <summary>Signs a person in with a join code, which then has one use less. It stands for the password, not for a second factor.</summary>
    public async Task<Outcome<Admittance>> JoinAsync(string code, string oneTime, Caller caller, CancellationToken cancellation)
    {
        if (limits.WaitFor(caller.Address, AnyCode) is { } wait)
            return Refused(AccessRefusals.TooMany(wait));
        using var turn = await limits.TurnAsync(cancellation);
        if (turn is null)
            return Refused(AccessRefusals.TooMany(TimeSpan.FromSeconds(5)));
        var typed = Secrets.PlainCode(code);
        var codes = store.Read().Swept(clock.GetUtcNow()).Codes;
        var hash = await Task.Run(() => codes.FirstOrDefault(candidate => PasswordHash.Fits(typed, candidate.Hash))?.Hash, cancellation);
        var outcome = hash is null ? Refused(AccessRefusals.WrongCode()) : store.Change(book => Use(book.Swept(clock.GetUtcNow()), hash, oneTime, caller));
        if (outcome.Value is null)
            limits.Failed(caller.Address, AnyCode);
        else
            limits.Succeeded(caller.Address, AnyCode);
        return outcome;
    }

    /// <summary>The person of a name, or null.</summary>
    public KnownPerson? Known(string name) => store.Read().Find(name);

    /// <summary>Who holds a token; null when nobody does any more.</summary>
    /// <param name="token">What the device showed.</param>
    /// <param name="isUse">False for what a page does by itself, which keeps no session alive.</param>
    public SignedIn? Find(string token, bool isUse)
    {
        var now = clock.GetUtcNow();
        var hash = Secrets.HashOf(token);
        var book = store.Read();
        if (book.Sessions.FirstOrDefault(candidate => Secrets.Equal(candidate.Hash, hash)) is not { } session || !session.HoldsAt(now) || book.Find(session.Person) is not { } person)
            return null;
        if (isUse && now - session.Used >= SessionTimes.UsedStep)
            store.Change(before => (before with { Sessions = [.. before.Sessions.Select(other => other.Id == session.Id ? other with { Used = now } : other)] }, true));
        return new SignedIn(person.Name, person.Role, person.Id, session.Id);
    }

    /// <summary>Devices on which a person is signed in, the last used first.</summary>
    public IReadOnlyList<AccessSession> Devices(SignedIn who) =>
        [.. store.Read().Swept(clock.GetUtcNow()).Sessions.Where(session => session.Person == who.Person).OrderByDescending(session => session.Used)];

    /// <summary>Signs out devices of a person; those of others are left alone.</summary>
    public void SignOut(SignedIn who, Func<Guid, bool> which) => store.Change(book =>
        (book with { Sessions = [.. book.Sessions.Where(session => session.Person != who.Person || !which(session.Id))] }, true));

    // Looked up again under the lock: two devices that send one code at the same moment use it twice, or one of them is refused.
    private (AccessBook Book, Outcome<Admittance> Answer) Use(AccessBook book, string hash, string oneTime, Caller caller)
    {
        if (book.Codes.FirstOrDefault(candidate => candidate.Hash == hash) is not { } code || book.Find(code.Person) is not { } person)
            return (book, Refused(AccessRefusals.WrongCode()));
        if (person.Second is { IsOn: true } second)
        {
            var now = clock.GetUtcNow();
            if (second.After(oneTime, now) is not { } after)
                return (book.Missing(person, oneTime, now), Refused(AccessRefusals.WrongCode()));
            person = person with { Second = after };
        }

        return Admit(book.With(person) with { Codes = [.. book.Codes.Select(other => other == code ? other with { DevicesLeft = other.DevicesLeft - 1 } : other)] }, person, caller);
    }

    private (AccessBook Book, Outcome<Admittance> Answer) Admit(AccessBook book, KnownPerson person, Caller caller)
    {
        var now = clock.GetUtcNow();
        var token = Secrets.NewToken();
        var session = new AccessSession(Guid.NewGuid(), Secrets.HashOf(token), person.Id, now, now, caller.Device);
        var swept = book.Swept(now);
        return (swept with { Sessions = [.. swept.Sessions, session] }, Outcome.Of(new Admittance(new SignedIn(person.Name, person.Role, person.Id, session.Id), token)));
    }

    private static Outcome<Admittance> Refused(Diagnostic diagnostic) => Outcome.Refused<Admittance>([diagnostic]);
}
