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

    [Fact]
    public async Task A_plate_is_drawn_with_a_table_and_fits_its_page()
    {
        var heights = string.Join('\n', Enumerable.Range(0, 20).Select(row => string.Join(' ', Enumerable.Range(0, 20).Select(column => FormattableString.Invariant($"{0.05 * Math.Sin(row * 7.1) * Math.Cos(column * 3.3):0.0000}")))));
        var page = await Visitor.SendAsync("/level", "level", ("heights", heights), ("spacing-x", "15"), ("spacing-y", "15"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Heights as probed: lines of equal height", page.Html, StringComparison.Ordinal);
        Assert.Contains("times larger than the plate.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Heights as probed, as a table", page.Text, StringComparison.Ordinal);
        Assert.InRange(page.Html.Length, 20_000, 150_000);
    }

    [Fact]
    public async Task Cold_and_hot_map_are_both_kept_and_come_back_as_files_to_be_saved()
    {
        const string Cold = "x;y;z\n0;0;0\n300;0;0\n0;300;0\n300;300;0\n";
        await Visitor.SendAsync("/level", "level", ("heights", Cold), ("later", Cold.Replace("300;300;0", "300;300;0,02", StringComparison.Ordinal)), ("build", Server.Build.Id), ("person", "Ida"));

        var record = await Visitor.GetAsync(Server.Record);
        var links = System.Text.RegularExpressions.Regex.Matches(record.Html, "href=\"(/builds/[^\"]+/files/[0-9a-f]{64})\"").Select(match => match.Groups[1].Value).ToList();
        Assert.Equal(2, links.Count);
        var file = await Visitor.GetAsync(links[1]);

        Assert.Equal(HttpStatusCode.OK, file.Status);
        Assert.Contains("300;300;0,02", file.Html, StringComparison.Ordinal);
        Assert.Equal("text/csv; charset=utf-8", file.Header("Content-Type"));
        Assert.Equal("nosniff", file.Header("X-Content-Type-Options"));
        Assert.StartsWith("attachment; filename=later.csv", file.Header("Content-Disposition"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync($"/builds/{Server.Build.Id}/files/{new string('0', 64)}")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync($"/builds/{Guid.NewGuid()}/files/{links[1][^64..]}")).Status);
    }

    [Theory]
    [InlineData("../../etc/pass wd.csv", "pass-wd.csv")]
    [InlineData("C:\\data\\left belt.WAV", "left-belt-WAV.csv")]
    [InlineData(".htaccess", "htaccess.csv")]
    [InlineData("map.csv\r\nSet-Cookie: a", "map-csv--Set-Cookie--a.csv")]
    [InlineData("page.html", "page-html.csv")]
    [InlineData("…", "data.csv")]
    public void A_data_file_bears_a_name_that_is_nothing_but_a_name(string given, string safe) =>
        Assert.Equal(safe, Proveout.Web.Pages.Measure.DataFileEndpoints.SafeName(given, ".csv"));

    [Fact]
    public async Task A_motor_is_kept_by_a_form_of_its_own()
    {
        var page = await Visitor.SendAsync("/motor?teeth=20&current=1.68&resistance=1.65&inductance=2.8&holding-torque=0.44", "motor", ("build", Server.Build.Id), ("title", "X axis"), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measured: X axis. to set: steps for each millimetre 80.0 1/mm", (await Visitor.GetAsync(Server.Record)).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Visitor.SendAsync("/motor?teeth=20", "motor", ("build", ""))).Status);
    }

    [Fact]
    public async Task What_is_seen_at_a_frame_is_answered_with_suspects_beside_what_was_measured()
    {
        var page = await Visitor.SendAsync("/frame", "frame", ("seen-touch", "0"), ("seen-skew", "1"), ("ab", "400"), ("da", "400"), ("bc", "400"), ("cd", "400"), ("ac", "565.7"), ("bd", "565.7"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("squares come out square; the gantry touches one stop first", page.Text, StringComparison.Ordinal);
        Assert.Contains("Diagonal A-C less B-D: 0 mm", page.Text, StringComparison.Ordinal);
        Assert.Contains("stop is misplaced", page.Text, StringComparison.Ordinal);
        Assert.Contains("Worth most now", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_proof_of_belts_is_kept_with_what_was_seen()
    {
        var address = "/machines/alderbrook/belts?seen-bind%3Ax=2";
        var page = await Visitor.PostAsync(address, Visitor.Fill((await Visitor.GetAsync(address)).HiddenFields("belts-keep"), ("build", Server.Build.Id), ("person", "Ida")));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Kept in the record of", page.Text, StringComparison.Ordinal);
        Assert.Contains("Seen: x binds on its way by hand.", (await Visitor.GetAsync(Server.Record)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_error_budget_is_added_up_plotted_and_kept()
    {
        var page = await Visitor.SendAsync("/budget", "budget", ("travel-x", "300"), ("travel-y", "300"), ("square", "0.1"), ("plate", "0.2"), ("build", Server.Build.Id), ("person", "Ida"));

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("How far Y may be off over the travel of x", page.Html, StringComparison.Ordinal);
        Assert.Contains("Measured: Error budget to the nozzle.", (await Visitor.GetAsync(Server.Record)).Text, StringComparison.Ordinal);
    }
}
