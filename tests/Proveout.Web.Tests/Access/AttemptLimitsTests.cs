using Proveout.Web.Access;

namespace Proveout.Web.Tests.Access;

public sealed class AttemptLimitsTests
{
    private readonly OwnClock _clock = new();

    [Fact]
    public void One_address_cannot_try_many_names()
    {
        using var limits = new AttemptLimits(_clock);
        var tries = Enumerable.Range(0, 30).Select(number => limits.WaitFor("192.0.2.7", $"Name {number}")).ToArray();
        Assert.All(tries[..AttemptLimits.TriesOfAddress], Assert.Null);
        Assert.Contains(tries, wait => wait is not null);
        Assert.Null(limits.WaitFor("192.0.2.8", "Name 1"));
    }

    [Fact]
    public void One_name_cannot_be_tried_from_many_addresses()
    {
        using var limits = new AttemptLimits(_clock);
        var tries = Enumerable.Range(0, 60).Select(number => limits.WaitFor($"192.0.2.{number}", "Ida Brandt")).ToArray();
        Assert.All(tries[..AttemptLimits.TriesOfName], Assert.Null);
        Assert.Contains(tries, wait => wait is not null);
    }

    [Fact]
    public void Every_failure_in_a_row_doubles_the_wait_up_to_five_minutes()
    {
        using var limits = new AttemptLimits(_clock);
        var waits = new List<double>();
        for (var failure = 1; failure <= 12; failure++)
        {
            limits.Failed("192.0.2.7", "Ida Brandt");
            waits.Add(limits.WaitFor("192.0.2.7", "ida brandt ") is { } wait ? wait.TotalSeconds : 0);
        }

        Assert.Equal([0, 0, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300], waits);
    }

    [Fact]
    public void Failures_of_a_neighbour_do_not_make_the_person_wait()
    {
        using var limits = new AttemptLimits(_clock);
        for (var failure = 1; failure <= 12; failure++)
            limits.Failed("192.0.2.7", "Ida Brandt");
        Assert.Null(limits.WaitFor("192.0.2.8", "Ida Brandt"));
    }

    [Fact]
    public void Who_came_in_starts_afresh()
    {
        using var limits = new AttemptLimits(_clock);
        for (var failure = 1; failure <= 5; failure++)
            limits.Failed("192.0.2.7", "Ida Brandt");
        limits.Succeeded("192.0.2.7", "Ida Brandt");
        Assert.Null(limits.WaitFor("192.0.2.7", "Ida Brandt"));
    }
}
