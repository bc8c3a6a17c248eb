using System.Net;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>The reading straight from a simulated instrument on this computer.</summary>
public sealed class MeterPageTests
{
    [Theory]
    [InlineData("+3.1000E-01", "0.31")]
    [InlineData("9.9E37", "OL")]
    public async Task The_meter_fills_the_field_and_enters_nothing(string answer, string typed)
    {
        await using var meter = new SimulatedMeter(answer);
        await using var server = await BenchServer.StartWithMeterAsync(meter.Address);
        using var visitor = server.Visit();
        var step = await FirstOfResistanceAsync(server);
        var page = await visitor.SendAsync(server.Check(step), "take");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains($"value=\"{typed}\"", page.Html, StringComparison.Ordinal);
        Assert.Contains("Not entered yet.", page.Text, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;simulated", page.Html, StringComparison.Ordinal);
        Assert.Equal(["*IDN?", "MEASure:RESistance?"], meter.Asked);
        Assert.Equal(StepStatus.Open, (await server.StateAsync()).FindStep(step.Check.Id)!.Status);
    }

    [Fact]
    public async Task A_meter_that_breaks_off_is_told_and_nothing_is_entered()
    {
        await using var meter = new SimulatedMeter(null);
        await using var server = await BenchServer.StartWithMeterAsync(meter.Address);
        using var visitor = server.Visit();
        var page = await visitor.SendAsync(server.Check(await FirstOfResistanceAsync(server)), "take");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("Nothing answers at the address of the meter.", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_caution_stands_before_the_button_of_the_meter()
    {
        await using var meter = new SimulatedMeter("1");
        await using var server = await BenchServer.StartWithMeterAsync(meter.Address);
        using var visitor = server.Visit();
        var html = (await visitor.GetAsync(server.Check(await FirstOfResistanceAsync(server)))).Html;
        Assert.InRange(html.IndexOf("class=\"caution", StringComparison.Ordinal), 0, html.IndexOf("Take the reading", StringComparison.Ordinal));
        Assert.Empty(meter.Asked);
    }

    [Fact]
    public async Task Without_a_meter_there_is_no_button()
    {
        await using var server = await BenchServer.StartAsync();
        using var visitor = server.Visit();
        Assert.DoesNotContain("Take the reading", (await visitor.GetAsync(server.Check(await FirstOfResistanceAsync(server)))).Html, StringComparison.Ordinal);
    }

    private static async Task<BenchStep> FirstOfResistanceAsync(BenchServer server) =>
        (await server.StateAsync()).Steps.First(step => step.Check.Kind == "resistance");
}
