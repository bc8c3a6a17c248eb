using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Looks whether somebody is who they say: password and, where the person has put one on, the second factor, in one answer that does not tell which was wrong.</summary>
/// <param name="store">Who may come in.</param>
/// <param name="limits">Slows down who tries. Codes count with passwords.</param>
/// <param name="clock">The clock.</param>
internal sealed class PersonProof(IAccessStore store, IAttemptLimits limits, TimeProvider clock)
{
    /// <summary>The person, whose code is then used up.</summary>
    public async Task<Outcome<KnownPerson>> TryAsync(string name, string password, string code, string address, CancellationToken cancellation)
    {
        if (limits.WaitFor(address, name) is { } wait)
            return Refused(AccessRefusals.TooMany(wait));
        using var turn = await limits.TurnAsync(cancellation);
        if (turn is null)
            return Refused(AccessRefusals.TooMany(TimeSpan.FromSeconds(5)));
        var book = store.Read();
        var person = book.Find(name);
        // A longer one was never taken, so that it need not be computed.
        var paper = password.Length > PasswordRules.Longest ? null : await Task.Run(() => Fits(person, password, code), cancellation);
        if (paper is null || !store.Change(before => Use(before, person!, code, paper)))
        {
            limits.Failed(address, name);
            return Refused(AccessRefusals.WrongPassword(book.AsksForCodes));
        }

        limits.Succeeded(address, name);
        return Outcome.Of(store.Read().Find(person!.Id) ?? person);
    }

    // The code on paper that was given with the right password, null without the right password. Whatever looks like one costs its hash, so that the time does not tell that the password was right.
    private static PaperCode? Fits(KnownPerson? person, string password, string code)
    {
        var fits = PasswordHash.Fits(password, person?.Password);
        var paper = PaperCode.None;
        if (RecoveryCodes.Read(code) is (var place, var plain))
        {
            var kept = person?.Second?.Recovery.ElementAtOrDefault(place) ?? "";
            if (PasswordHash.Fits(plain, kept))
                paper = new PaperCode(place, kept);
        }

        return fits ? paper : null;
    }

    // Looked up again under the lock, so that a code that two send at the same moment is taken once.
    private (AccessBook Book, bool Fits) Use(AccessBook book, KnownPerson proven, string code, PaperCode paper)
    {
        if (book.Find(proven.Id) is not { } person || person.Password != proven.Password)
            return (book, false);
        if (person.Second is not { IsOn: true } second)
            return (book, true);
        var now = clock.GetUtcNow();
        if (second.After(code, now) is { } after)
            return (book.With(person with { Second = after }), true);
        return second.Without(paper.Place, paper.Hash) is { } less
            ? (book.With(person with { Second = less }).Noting(person, AccessEvent.RecoveryUsed, now), true)
            : (book.Missing(person, code, now), false);
    }

    private static Outcome<KnownPerson> Refused(Diagnostic diagnostic) => Outcome.Refused<KnownPerson>([diagnostic]);

    private sealed record PaperCode(int Place, string Hash)
    {
        public static PaperCode None { get; } = new(-1, "");
    }
}
