namespace Proveout.Workshop.Tests.Readings;

public sealed class PlugStateTests
{
    private static LoadedMachine Alderbrook { get; } = Samples.Load("alderbrook");

    // Common practice: a sensor of 100 kilohms that is plugged in reads a few kilohms, for the input's pull-up resistor lies beside it.
    [Fact]
    public void A_sensor_that_is_plugged_in_reads_its_inputs_pull_up()
    {
        var answer = Of("B1.1", "B1.2", 4600);

        Assert.True(answer.States[0].Fits);
        Assert.All(answer.States.Skip(1), state => Assert.False(state.Fits));
        Assert.Contains("Look what is plugged", answer.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Pulling_the_sensors_own_plug_is_enough_to_see_the_sensor()
    {
        var answer = Of("B1.1", "B1.2", 100e3);

        var pulled = Assert.Single(answer.States, state => state.Both.SetUp.Title == "Only plug TEMPERATURE of A2 pulled");
        Assert.True(pulled.Fits);
        Assert.False(answer.States[0].Fits);
    }

    [Fact]
    public void A_reading_that_is_wrong_whatever_is_plugged_says_so()
    {
        var answer = Of("B1.1", "B1.2", 3);

        Assert.True(answer.FitsNowhere);
        Assert.Contains("none of these states", answer.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_reading_nothing_is_judged()
    {
        var answer = Of("B1.1", "B1.2", null);

        Assert.Empty(answer.Verdict);
        Assert.All(answer.States, state => Assert.Null(state.Fits));
    }

    [Fact]
    public void A_terminal_that_does_not_exist_is_refused()
    {
        var refused = ReadingsBetween.InPlugStates(Alderbrook, "B1.1", "B1.9", null);

        Assert.Equal("no-such-terminal", Assert.Single(refused.Diagnostics).Rule);
    }

    private static PlugStateAnswer Of(string red, string black, double? ohms) =>
        ReadingsBetween.InPlugStates(Alderbrook, red, black, ohms).Value!;
}
