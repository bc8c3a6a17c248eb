using Proveout.Journal.Tests.Postgres;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Workshop.Tests.Access;

public sealed class SharedTallyTests(SharedServer shared) : AttemptLimitsContract
{
    private readonly SharedPlace _place = new(shared.Server);

    [Fact]
    public void What_was_typed_as_a_name_does_not_stand_in_the_database()
    {
        using var limits = new AttemptLimits(Open(), new SetClock());
        Assert.Null(limits.WaitFor("192.0.2.7", "seven herons wade upstream"));
        limits.Failed("192.0.2.7", "seven herons wade upstream");
        var names = shared.Server.Read<string>(PostgresServer.NameIn(_place.Address), "SELECT string_agg(name, ',' ORDER BY name) FROM proveout_servers.tries");
        Assert.Matches("^address 192.0.2.7,failures 192.0.2.7 [0-9a-f]{4},name [0-9a-f]{4}$", names);
    }

    [Fact]
    public void Counts_that_are_forgotten_are_taken_out_of_the_database()
    {
        var clock = new SetClock();
        using var limits = new AttemptLimits(Open(), clock);
        limits.Failed("192.0.2.7", "Ida Brandt");
        clock.Go(TimeSpan.FromMinutes(61));
        limits.Failed("192.0.2.8", "Ida Brandt");
        Assert.Equal(1L, shared.Server.Read<long>(PostgresServer.NameIn(_place.Address), "SELECT count(*) FROM proveout_servers.tries"));
    }

    protected override IAttemptTally Open() => AccessKeeping.In(_place.Open())!.Tally;

    protected override void Close() => _place.Dispose();
}
