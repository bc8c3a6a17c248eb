using Proveout.Engine.Electrical;
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
