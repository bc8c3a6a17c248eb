using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Worked examples of an application note on solid-state relays and heat sinks, kept in the shared reference values, section 9.3.</summary>
public sealed class SwitchOnSinkTests
{
    [Fact]
    public void Junction_base_and_sink_come_to_the_temperatures_of_the_example()
    {
        var relay = new SwitchOnSink(10, 1.2, 0.2, 2.0);
        Assert.Equal((79, 67, 65), (relay.JunctionCelsius(45), relay.BaseCelsius(45), relay.SinkCelsius(45)));
        Assert.Equal(5.6, relay.MostSinkToAir(115, 45), 1e-9);
        Assert.Equal(92.48, new SwitchOnSink(12.8, 1.5, 0.1, 2.5).JunctionCelsius(40), 1e-9);
    }

    [Fact]
    public void Air_at_the_limit_brings_the_junction_to_its_own() =>
        Assert.Equal(115, new SwitchOnSink(10, 1.2, 0.2, 2.0) is var relay ? relay.JunctionCelsius(relay.BearsAirUpTo(115)) : 0, 1e-9);

    // 0.85 V, 12 mΩ, 10 A: 8.8527 W.
    [Fact]
    public void Heat_of_a_full_sine_follows_from_threshold_and_slope() => Assert.Equal(8.8527, SwitchOnSink.WattsOfSine(0.85, 0.012, 10), 1e-4);
}
