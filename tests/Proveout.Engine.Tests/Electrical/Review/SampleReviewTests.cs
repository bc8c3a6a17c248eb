using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Review;

public sealed class SampleReviewTests
{
    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_samples_have_no_error_and_no_warning(string sample) =>
        Assert.Empty(DesignReview.Of(Repository.Design(sample)).Where(finding => finding.Severity > FindingSeverity.Note).Select(finding => $"{finding.Rule}: {finding.Sentence}"));

    [Fact]
    public void Thin_leads_of_a_5_V_rail_too_weak_to_start_a_fire_are_a_note() =>
        Assert.Equal(
            ["W337", "W338", "W611", "W612"],
            DesignReview.Of(Repository.Design("alderbrook"))
                .Where(finding => finding.Rule is "fuse-protects-conductor" or "fuses-protect-return" && finding.Subjects is ["W337" or "W338" or "W611" or "W612"])
                .Select(finding => finding.Subjects[0])
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
