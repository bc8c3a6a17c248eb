using System.Globalization;

namespace Proveout.Workshop.Tests.Access;

/// <summary>How tries are slowed down, wherever they are counted: here and there count together.</summary>
public abstract class AttemptLimitsContract : IDisposable
{
    private const string Ida = "Ida Brandt";
    private const string Here = "192.0.2.7";
    private readonly SetClock _clock = new();
    private readonly List<AttemptLimits> _opened = [];

    [Fact]
    public void One_address_cannot_try_many_names()
    {
        var servers = Servers();
        var tries = Enumerable.Range(0, 30).Select(number => servers[number % 2].WaitFor(Here, string.Create(CultureInfo.InvariantCulture, $"Name {number}"))).ToArray();
        Assert.All(tries[..AttemptLimits.TriesOfAddress], Assert.Null);
        Assert.All(tries[AttemptLimits.TriesOfAddress..], wait => Assert.Equal(6, wait!.Value.TotalSeconds, 3));
        Assert.All(servers, server => Assert.Null(server.WaitFor("192.0.2.8", "Name 1")));
    }

    [Fact]
    public void One_name_cannot_be_tried_from_many_addresses()
    {
        var servers = Servers();
        var tries = Enumerable.Range(0, 60).Select(number => servers[number % 2].WaitFor($"192.0.2.{number}", Ida)).ToArray();
        Assert.All(tries[..AttemptLimits.TriesOfName], Assert.Null);
        Assert.All(tries[AttemptLimits.TriesOfName..], wait => Assert.NotNull(wait));
    }

    [Fact]
    public void A_try_comes_back_each_six_seconds_and_all_of_them_in_time()
    {
        var servers = Servers();
        for (var count = 0; count < AttemptLimits.TriesOfAddress; count++)
            Assert.Null(servers[0].WaitFor(Here, $"Name {count}"));
        Assert.NotNull(servers[1].WaitFor(Here, Ida));
        _clock.Go(TimeSpan.FromSeconds(5));
        Assert.Equal(1, servers[1].WaitFor(Here, Ida)!.Value.TotalSeconds, 3);
        _clock.Go(TimeSpan.FromSeconds(1));
        Assert.Null(servers[1].WaitFor(Here, Ida));
        Assert.NotNull(servers[0].WaitFor(Here, Ida));
        _clock.Go(TimeSpan.FromHours(2));
        Assert.All(Enumerable.Range(0, AttemptLimits.TriesOfAddress), count => Assert.Null(servers[0].WaitFor(Here, $"Name {count}")));
    }

    [Fact]
    public void Every_failure_in_a_row_doubles_the_wait_up_to_five_minutes()
    {
        var servers = Servers();
        var waits = new List<double>();
        for (var failure = 1; failure <= 12; failure++)
        {
            servers[failure % 2].Failed(Here, Ida);
            waits.Add(servers[failure % 2].WaitFor(Here, "ida brandt ") is { } wait ? wait.TotalSeconds : 0);
        }

        Assert.Equal([0, 0, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300], waits);
    }

    [Fact]
    public void Who_failed_at_one_waits_at_the_other()
    {
        var servers = Servers();
        for (var failure = 1; failure <= 4; failure++)
            servers[0].Failed(Here, Ida);
        Assert.Equal(TimeSpan.FromSeconds(4), servers[1].WaitFor(Here, Ida));
        _clock.Go(TimeSpan.FromSeconds(3));
        Assert.Equal(TimeSpan.FromSeconds(1), servers[1].WaitFor(Here, Ida));
        _clock.Go(TimeSpan.FromSeconds(1));
        Assert.Null(servers[1].WaitFor(Here, Ida));
    }

    [Fact]
    public void Failures_of_a_neighbour_do_not_make_the_person_wait()
    {
        var servers = Servers();
        for (var failure = 1; failure <= 12; failure++)
            servers[0].Failed(Here, Ida);
        Assert.All(servers, server => Assert.Null(server.WaitFor("192.0.2.8", Ida)));
    }

    [Fact]
    public void Who_came_in_starts_afresh_and_elsewhere_within_five_seconds()
    {
        var servers = Servers();
        for (var failure = 1; failure <= 5; failure++)
            servers[0].Failed(Here, Ida);
        Assert.NotNull(servers[1].WaitFor(Here, Ida));
        servers[0].Succeeded(Here, Ida);
        Assert.Null(servers[0].WaitFor(Here, Ida));
        _clock.Go(TimeSpan.FromSeconds(5));
        Assert.Null(servers[1].WaitFor(Here, Ida));
    }

    [Fact]
    public void Failures_of_more_than_an_hour_ago_are_forgotten()
    {
        var servers = Servers();
        for (var failure = 1; failure <= 5; failure++)
            servers[0].Failed(Here, Ida);
        _clock.Go(TimeSpan.FromMinutes(61));
        servers[1].Failed(Here, Ida);
        Assert.Null(servers[0].WaitFor(Here, Ida));
    }

    [Fact]
    public void Tries_at_the_same_moment_are_all_counted()
    {
        var servers = Servers();
        var waits = new TimeSpan?[40];
        Parallel.For(0, waits.Length, new ParallelOptions { MaxDegreeOfParallelism = 8 }, number => waits[number] = servers[number % 2].WaitFor(Here, Ida));
        Assert.Equal(AttemptLimits.TriesOfAddress, waits.Count(wait => wait is null));
    }

    public void Dispose()
    {
        foreach (var limits in _opened)
            limits.Dispose();
        Close();
        GC.SuppressFinalize(this);
    }

    /// <summary>A tally; all of one test count together.</summary>
    protected abstract IAttemptTally Open();

    /// <summary>Takes the place away.</summary>
    protected abstract void Close();

    private AttemptLimits[] Servers()
    {
        _opened.AddRange([new AttemptLimits(Open(), _clock), new AttemptLimits(Open(), _clock)]);
        return [.. _opened];
    }
}
