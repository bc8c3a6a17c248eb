using System.Net;

namespace Proveout.Web.Tests;

public sealed class MeasurePageTests : BenchPageTests
{
    [Fact]
    public async Task A_frame_is_judged_and_kept_in_the_record_of_a_build()
    {
        var page = await Visitor.SendAsync("/frame", "frame", ("stop-left", "0"), ("stop-right", "0,6"), ("span", "400"), ("build", Server.Build.Id), ("title", "Gantry"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("its right end stays behind", page.Text, StringComparison.Ordinal);
        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measured: Gantry.", (await Visitor.GetAsync($"/builds/{Server.Build.Id}/record")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plate_is_levelled_from_typed_heights()
    {
        var page = await Visitor.SendAsync("/level", "level", ("heights", "x;y;z\n0;0;0\n300;0;0,3\n0;300;0\n300;300;0,3"), ("supports", "left 0 150\nright front 300 0\nright back 300 300"), ("pitch", "0.5"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Turn left about 5 eighths of a turn clockwise", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_that_cannot_be_read_is_refused_with_its_place_and_kept()
    {
        var page = await Visitor.SendAsync("/level", "level", ("heights", "x;y;z\n0;0;zero"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("heights:2:5: `zero` is not a number.", page.Text, StringComparison.Ordinal);
        Assert.Contains("0;0;zero", page.Html, StringComparison.Ordinal);
    }
}
