using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>How a run of the campaign is watched and stopped.</summary>
public sealed class CampaignRunTests
{
    private static readonly WiringCampaign Campaign = new(Repository.Design("pennywort"));

    [Fact]
    public void A_run_reports_when_all_is_done()
    {
        var shares = new Shares();

        Campaign.Run(shares, TestContext.Current.CancellationToken);

        Assert.Contains(1.0, shares.All);
        Assert.All(shares.All, share => Assert.InRange(share, 0, 1));
    }

    [Fact]
    public void A_run_that_is_stopped_makes_no_dictionary() =>
        Assert.Throws<OperationCanceledException>(() => Campaign.Run(new CancellationToken(canceled: true)));

    [Fact]
    public void Faults_in_series_elements_are_simulated_once_and_read_as_each_of_them_does()
    {
        var dictionary = Campaign.Run(TestContext.Current.CancellationToken);
        var alike = Enumerable.Range(0, Campaign.Faults.Count).GroupBy(dictionary.ResponseOf, ReferenceEqualityComparer.Instance).Where(group => group.Count() > 1).ToArray();

        Assert.NotEmpty(alike);
        foreach (var fault in alike.SelectMany(group => group))
        {
            var alone = Campaign.SimulateTogether([fault]);
            Assert.All(alone.Index(), shown => Assert.True(IsSame(shown.Item, dictionary.IntervalOf(fault, shown.Index)), $"{Campaign.Faults[fault].Fault.Id} at {dictionary.Checks[shown.Index].Id}"));
        }
    }

    [Fact]
    public void A_response_lists_no_check_that_shows_what_the_sound_machine_shows()
    {
        var dictionary = Campaign.Run(TestContext.Current.CancellationToken);

        for (var fault = 0; fault < Campaign.Faults.Count; fault++)
            foreach (var (place, check) in dictionary.ResponseOf(fault).Checks.Index())
                Assert.NotEqual(dictionary.Checks[check].Expectation, dictionary.ResponseOf(fault).Intervals[place]);
    }

    private static bool IsSame(ReadingInterval one, ReadingInterval other) => IsSame(one.Low, other.Low) && IsSame(one.High, other.High);

    private static bool IsSame(double one, double other) => one.Equals(other) || Math.Abs(one - other) <= 1e-9 * (Math.Abs(one) + 0.1);

    private sealed class Shares : IProgress<double>
    {
        private readonly Lock _lock = new();

        public List<double> All { get; } = [];

        public void Report(double value)
        {
            lock (_lock)
                All.Add(value);
        }
    }
}
