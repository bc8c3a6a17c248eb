using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Review;

public sealed class SampleReviewTests
{
    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_samples_have_no_errors(string sample) =>
        Assert.DoesNotContain(DesignReview.Of(Repository.Design(sample)), finding => finding.Severity == FindingSeverity.Error);

    [Fact]
    public void What_is_left_in_the_enclosed_printer_are_thin_leads_of_its_5_V_rail() =>
        Assert.Equal(
            ["W337", "W338", "W611", "W612"],
            DesignReview.Of(Repository.Design("alderbrook"))
                .Where(finding => finding.Severity == FindingSeverity.Warning)
                .SelectMany(finding => finding.Subjects)
                .Order(StringComparer.Ordinal));

    [Fact]
    public void The_mains_heater_of_the_enclosed_printer_is_seen_behind_relay_contactor_and_cut_off()
    {
        var context = new ReviewContext(WiringNetworkBuilder.Build(Repository.Design("alderbrook")));
        var plate = Assert.Single(context.Loads, load => load.Element.Subject == "E1");
        Assert.True(plate.Reach.Supply.IsMains);
        Assert.Equal(2.17, plate.NominalAmperes, 0.01);
        Assert.Equal(6, plate.Reach.AmperesAt(plate.Fed));
    }
}
