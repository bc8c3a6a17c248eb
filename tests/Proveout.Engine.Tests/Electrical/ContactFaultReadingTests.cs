using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Contacts that never open, never close or are of the other sense, at rest and operated, against MathNet.Numerics' dense solvers.</summary>
public sealed class ContactFaultReadingTests
{
    private const double RelativeTolerance = 1e-6;

    private static readonly WiringCampaign Campaign = new(Repository.Design("pennywort"));
    private static readonly WiringCampaign Relays = new(Repository.Design("quarrymoor"));

    [Theory]
    [InlineData("contact-stuck-closed")]
    [InlineData("contact-never-closes")]
    [InlineData("contact-sense")]
    public void Every_reading_in_every_set_up_is_that_of_a_dense_solver(string kind)
    {
        var worst = Compare(Campaign, kind, limits => limits);

        Assert.True(worst.Relative <= RelativeTolerance, $"{worst}");
    }

    // Lower limits in the megohms hang on insulation beside the resistances, which has tests of its own.
    [Theory]
    [InlineData("contact-stuck-closed")]
    [InlineData("contact-never-closes")]
    [InlineData("contact-sense")]
    public void Every_upper_limit_of_a_machine_full_of_relays_is_that_of_a_dense_solver(string kind)
    {
        var worst = Compare(Relays, kind, limits => (limits.HighOhms, limits.HighOhms));

        Assert.True(worst.Relative <= RelativeTolerance, $"{worst}");
    }

    private static Deviation Compare(WiringCampaign campaign, string kind, Func<(double LowOhms, double HighOhms), (double LowOhms, double HighOhms)> part)
    {
        var worst = new Deviation();
        foreach (var (table, setUp) in campaign.PortTables().Zip(DeadSetUps.Of(campaign.Context.Design)))
        {
            var worker = new PortWorker(table);
            foreach (var fault in campaign.Faults.Where(fault => fault.Fault.Kind == kind))
            {
                worker.Apply(fault);
                var dense = new DenseWiring(campaign.Context.Wiring, new FaultyWiring(campaign.Context.Wiring, setUp.State, fault));
                for (var index = 0; index < table.Candidates.Length; index++)
                    worst.Compare(part(dense.Limits(table.Candidates[index])), part(worker.LimitsOf(index)), table.Candidates[index].Check.Id, fault.Fault.Id);
            }
        }

        return worst;
    }

    [Theory]
    [InlineData("contact-stuck-closed")]
    [InlineData("contact-never-closes")]
    [InlineData("contact-sense")]
    public void The_dictionary_says_what_every_check_whose_limits_change_shows(string kind)
    {
        var dictionary = Relays.Run();
        foreach (var table in Relays.PortTables())
        {
            var worker = new PortWorker(table);
            foreach (var (fault, item) in Relays.Faults.Index().Where(item => item.Item.Fault.Kind == kind))
            {
                worker.Apply(item);
                for (var index = 0; index < table.Candidates.Length; index++)
                    if (worker.LimitsOf(index) is var (low, high) && IsOther(table.Good[index], (low, high)))
                        Assert.Equal(table.Candidates[index].Mode.Shown(low, high), dictionary.IntervalOf(fault, table.FirstCheck + index));
            }
        }
    }

    private static bool IsOther((double Low, double High) one, (double Low, double High) two) => !IsSame(one.Low, two.Low) || !IsSame(one.High, two.High);

    // Twice the share below which a change is none.
    private static bool IsSame(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 2e-7 * Math.Min(one, two);
}
