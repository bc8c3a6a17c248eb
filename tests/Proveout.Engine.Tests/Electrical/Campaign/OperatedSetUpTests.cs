using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Campaign;

/// <summary>Set-ups with a control operated: faults that are passed over alter nothing there.</summary>
public sealed class OperatedSetUpTests
{
    [Fact]
    public void A_fault_that_is_passed_over_alters_no_reading_of_the_set_up()
    {
        var campaign = new WiringCampaign(Repository.Design("alderbrook"));
        var tables = campaign.Tables();
        var workers = WiringCampaign.Workers(tables);
        var (asked, alike) = (0, 0);
        var every = tables.Select(table => table is PortTable { Low.HasControls: true } ports ? new PortWorker(ports) : null).ToArray();
        foreach (var fault in campaign.Faults.Where((_, index) => index % 3 == 0))
            for (var place = 0; place < tables.Length; place++)
            {
                var found = Respond(workers[place], fault);
                if (every[place] is not { } plain)
                    continue;
                var expected = Respond(plain, fault);
                Assert.Equal(expected.Checks, found.Checks);
                Assert.Equal(expected.Intervals, found.Intervals);
                _ = expected.Checks.Count > 0 ? asked++ : alike++;
            }

        Assert.True(asked > 50 && alike > 50, $"{asked} responses and {alike} without: the trial says little.");
    }

    private static AlteredReadings Respond(ICheckWorker worker, WiringFault fault)
    {
        var readings = new AlteredReadings();
        worker.AddResponses(fault, readings);
        return readings;
    }
}
