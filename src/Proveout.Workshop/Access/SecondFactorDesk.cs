using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Puts a person's own second factor on and takes it off, with the password asked for again.</summary>
/// <param name="store">Who may come in.</param>
/// <param name="limits">Slows down who tries, together with the sign-in.</param>
/// <param name="clock">The clock.</param>
public sealed class SecondFactorDesk(IAccessStore store, IAttemptLimits limits, TimeProvider clock)
{
    /// <summary>How long a new key waits for its first code.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    private readonly PersonProof _proof = new(store, limits, clock);

    /// <summary>How a person's second factor stands.</summary>
    public SecondFactorStanding StandingOf(SignedIn who)
    {
        var book = store.Read();
        var person = book.Find(who.Person);
        return new SecondFactorStanding(
            person?.Password.Length > 0, person?.Second is { IsOn: true } second ? second : null, [.. book.NotesOrNone.Where(note => note.Person == who.Person).Reverse()]);
    }

    /// <summary>Makes a key, which is shown once and not asked for before <see cref="ConfirmAsync"/>.</summary>
    public async Task<Outcome<OneTimeKey>> BeginAsync(SignedIn who, string password, Caller caller, CancellationToken cancellation)
    {
        if (StandingOf(who).On is not null)
            return Outcome.Refused<OneTimeKey>([AccessRefusals.SecondFactorOn()]);
        var proven = await _proof.TryAsync(who.Name, password, "", caller.Address, cancellation);
        if (proven.Value is null)
            return Outcome.Refused<OneTimeKey>(proven.Diagnostics);
        var key = OneTimeKey.New();
        return Change(who, person => person.Second is { IsOn: true }
            ? (null, Outcome.Refused<OneTimeKey>([AccessRefusals.SecondFactorOn()]))
            : (person with { Second = new SecondFactor(key.Text, 0, [], clock.GetUtcNow(), IsOn: false) }, Outcome.Of(key)), noted: null);
    }

    /// <summary>Puts the second factor on by a first code of the new key, and signs the person out everywhere else.</summary>
    /// <returns>The codes on paper, which are kept nowhere.</returns>
    public async Task<Outcome<IReadOnlyList<string>>> ConfirmAsync(SignedIn who, string code, Caller caller, CancellationToken cancellation)
    {
        if (limits.WaitFor(caller.Address, who.Name) is { } wait)
            return Refused(AccessRefusals.TooMany(wait));
        using var turn = await limits.TurnAsync(cancellation);
        if (turn is null)
            return Refused(AccessRefusals.TooMany(TimeSpan.FromSeconds(5)));
        if (store.Read().Find(who.Person)?.Second is not { IsOn: false } begun || clock.GetUtcNow() - begun.Begun >= Patience)
            return Refused(AccessRefusals.NoKeyWaits());
        if (begun.After(code, clock.GetUtcNow()) is null)
        {
            limits.Failed(caller.Address, who.Name);
            return Refused(AccessRefusals.WrongFirstCode());
        }

        var (codes, hashes) = await Task.Run(RecoveryCodes.New, cancellation);
        return store.Change(book => PutOn(book, who, begun.Key, code, hashes)) ? Outcome.Of(codes) : Refused(AccessRefusals.NoKeyWaits());
    }

    /// <summary>Makes new codes on paper in the place of those before.</summary>
    /// <returns>The codes, which are kept nowhere.</returns>
    public async Task<Outcome<IReadOnlyList<string>>> NewCodesAsync(SignedIn who, string password, string code, Caller caller, CancellationToken cancellation)
    {
        var proven = await _proof.TryAsync(who.Name, password, code, caller.Address, cancellation);
        if (proven.Value is null)
            return Outcome.Refused<IReadOnlyList<string>>(proven.Diagnostics);
        var (codes, hashes) = await Task.Run(RecoveryCodes.New, cancellation);
        return Change(who, person => person.Second is { IsOn: true } second
            ? (person with { Second = second with { Recovery = hashes } }, Outcome.Of(codes))
            : (null, Refused(AccessRefusals.SecondFactorOff())), AccessEvent.RecoveryMade);
    }

    /// <summary>Takes the second factor off; the person is then asked for the password alone.</summary>
    public async Task<Outcome<KnownPerson>> TakeOffAsync(SignedIn who, string password, string code, Caller caller, CancellationToken cancellation)
    {
        var proven = await _proof.TryAsync(who.Name, password, code, caller.Address, cancellation);
        return proven.Value is null ? proven : Change(who, person =>
        {
            var without = person with { Second = null };
            return person.Second is { IsOn: true } ? (without, Outcome.Of(without)) : (null, Outcome.Refused<KnownPerson>([AccessRefusals.SecondFactorOff()]));
        }, AccessEvent.TakenOff);
    }

    // By identifier: somebody added anew under the same name is somebody else.
    private Outcome<T> Change<T>(SignedIn who, Func<KnownPerson, (KnownPerson? Person, Outcome<T> Answer)> change, AccessEvent? noted)
        where T : class => store.Change(book =>
        {
            if (book.Find(who.Person) is not { } person)
                return (book, Outcome.Refused<T>([AccessRefusals.WrongPassword(book.AsksForCodes)]));
            var (changed, answer) = change(person);
            return (changed is null ? book : noted is { } what ? book.With(changed).Noting(changed, what, clock.GetUtcNow()) : book.With(changed), answer);
        });

    // The first code counts as taken. Other devices of the person came in without a second factor: they have to come in anew.
    private (AccessBook Book, bool IsOn) PutOn(AccessBook book, SignedIn who, string key, string code, IReadOnlyList<string> hashes)
    {
        var now = clock.GetUtcNow();
        if (book.Find(who.Person) is not { Second: { IsOn: false } begun } person || begun.Key != key || begun.After(code, now) is not { } after)
            return (book, false);
        var changed = person with { Second = after with { IsOn = true, Recovery = hashes, Begun = now } };
        var alone = book with
        {
            Codes = [.. book.Codes.Where(join => join.Person != who.Person)],
            Sessions = [.. book.Sessions.Where(session => session.Person != who.Person || session.Id == who.Session)],
        };
        return (alone.With(changed).Noting(changed, AccessEvent.PutOn, now), true);
    }

    private static Outcome<IReadOnlyList<string>> Refused(Diagnostic diagnostic) => Outcome.Refused<IReadOnlyList<string>>([diagnostic]);
}
