namespace Proveout.Workshop.Tests.Access;

/// <summary>What people notice at two servers that share who may come in.</summary>
public abstract class AccessDesksContract : IDisposable
{
    private const string Ida = "Ida Brandt";
    private const string Password = "seven herons wade upstream";
    private static readonly Caller Phone = new("192.0.2.4", "phone at 192.0.2.4");
    private readonly SetClock _clock = new();
    private readonly List<AttemptLimits> _limits = [];

    [Fact]
    public async Task Who_signed_in_at_one_is_known_at_the_other_and_out_there_when_out_here()
    {
        var (here, there) = (Server(), Server());
        here.People.Add(Ida, AccessRole.Builder, Password);
        var admitted = (await here.Way.SignInAsync(Ida, Password, "", Phone, default)).Value!;
        Assert.Equal(Ida, there.Way.Find(admitted.Token, isUse: true)!.Name);
        Assert.Equal("phone at 192.0.2.4", Assert.Single(there.Way.Devices(admitted.Who)).Device);
        there.Way.SignOut(admitted.Who, session => session == admitted.Who.Session);
        Assert.Null(here.Way.Find(admitted.Token, isUse: true));
    }

    [Fact]
    public async Task Another_role_another_password_and_removal_count_at_the_other_at_once()
    {
        var (here, there) = (Server(), Server());
        here.People.Add(Ida, AccessRole.Builder, Password);
        var admitted = (await there.Way.SignInAsync(Ida, Password, "", Phone, default)).Value!;
        here.People.SetRole(Ida, AccessRole.Reader);
        Assert.Equal(AccessRole.Reader, there.Way.Find(admitted.Token, isUse: true)!.Role);
        here.People.SetPassword(Ida, "eight herons wade upstream");
        Assert.Null(there.Way.Find(admitted.Token, isUse: true));
        Assert.Null((await there.Way.SignInAsync(Ida, Password, "", Phone, default)).Value);
        var again = (await there.Way.SignInAsync(Ida, "eight herons wade upstream", "", Phone, default)).Value!;
        here.People.Remove(Ida);
        Assert.Null(there.Way.Find(again.Token, isUse: true));
    }

    [Fact]
    public async Task A_session_used_at_the_other_stays_alive_at_both()
    {
        var (here, there) = (Server(), Server());
        here.People.Add(Ida, AccessRole.Builder, Password);
        var token = (await here.Way.SignInAsync(Ida, Password, "", Phone, default)).Value!.Token;
        _clock.Go(TimeSpan.FromMinutes(90));
        Assert.NotNull(there.Way.Find(token, isUse: true));
        _clock.Go(TimeSpan.FromMinutes(90));
        Assert.NotNull(here.Way.Find(token, isUse: true));
    }

    [Fact]
    public async Task Of_one_join_code_sent_to_both_at_the_same_moment_one_is_let_in()
    {
        var (here, there) = (Server(), Server());
        var code = here.People.Invite(Ida, AccessRole.Checker, devices: 1).Value!;
        var answers = await Task.WhenAll(here.Way.JoinAsync(code, "", Phone, default), there.Way.JoinAsync(code, "", Phone, default));
        Assert.Single(answers, answer => answer.Value is not null);
    }

    [Fact]
    public async Task Of_one_code_of_the_authenticator_sent_to_both_at_the_same_moment_one_is_let_in()
    {
        var (here, there) = (Server(), Server());
        var key = WithSecondFactor(here);
        var code = OneTimeCodes.Of(key.Bytes(), OneTimeCodes.StepOf(_clock.GetUtcNow()));
        var answers = await Task.WhenAll(here.Way.SignInAsync(Ida, Password, code, Phone, default), there.Way.SignInAsync(Ida, Password, code, Phone, default));
        Assert.Single(answers, answer => answer.Value is not null);
    }

    [Fact]
    public async Task Wrong_codes_with_the_right_password_are_counted_over_both()
    {
        var (here, there) = (Server(), Server());
        WithSecondFactor(here);
        await here.Way.SignInAsync(Ida, Password, "000000", Phone, default);
        await there.Way.SignInAsync(Ida, Password, "000000", Phone, default);
        Assert.Equal(2, Store(here).Read().Find(Ida)!.Second!.Misses);
    }

    [Fact]
    public void People_of_another_bench_are_taken_in_once_with_what_was_noted_and_who_is_here_stays()
    {
        var (here, there) = (Server(), Server());
        here.People.Add("Tove Lund", AccessRole.Reader, Password);
        var (ida, tove) = (Person(Ida), Person("tove lund"));
        var other = new AccessBook([ida, tove], [], [new AccessSession(Guid.NewGuid(), "hash", ida.Id, _clock.GetUtcNow(), _clock.GetUtcNow(), "phone")])
            .Noting(ida, AccessEvent.RecoveryUsed, _clock.GetUtcNow()).Noting(tove, AccessEvent.Guessed, _clock.GetUtcNow());
        var taken = there.People.TakeIn(other);
        Assert.Equal((ida, tove), (Assert.Single(taken.Added), Assert.Single(taken.Known)));
        Assert.Empty(there.People.TakeIn(other).Added);
        Assert.Equal([(Ida, AccessRole.Builder, 0), ("Tove Lund", AccessRole.Reader, 0)], here.People.List().Select(one => (one.Person.Name, one.Person.Role, one.Devices)));
        Assert.Equal(AccessEvent.RecoveryUsed, Assert.Single(here.People.Notes()).Event);
    }

    public void Dispose()
    {
        foreach (var limits in _limits)
            limits.Dispose();
        Close();
        GC.SuppressFinalize(this);
    }

    /// <summary>What another server keeps at the place of this test.</summary>
    protected abstract AccessKeeping Open();

    /// <summary>Takes the place away.</summary>
    protected abstract void Close();

    private (SignInDesk Way, PeopleDesk People, AccessKeeping Keeping) Server()
    {
        var keeping = Open();
        var limits = new AttemptLimits(keeping.Tally, _clock);
        _limits.Add(limits);
        return (new SignInDesk(keeping.Store, limits, _clock), new PeopleDesk(keeping.Store, _clock), keeping);
    }

    private static IAccessStore Store((SignInDesk Way, PeopleDesk People, AccessKeeping Keeping) server) => server.Keeping.Store;

    private OneTimeKey WithSecondFactor((SignInDesk Way, PeopleDesk People, AccessKeeping Keeping) server)
    {
        var key = OneTimeKey.New();
        server.People.Add(Ida, AccessRole.Builder, Password);
        Store(server).Change(book => (book.With(book.Find(Ida)! with { Second = new SecondFactor(key.Text, 0, [], _clock.GetUtcNow(), IsOn: true) }), true));
        return key;
    }

    private KnownPerson Person(string name) => new(Guid.NewGuid(), name, AccessRole.Builder, "hash", _clock.GetUtcNow());
}
