using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Campaign;

/// <summary>What of a fault's readings is kept.</summary>
public sealed class AlteredReadingsTests
{
    private static readonly ReadingInterval Expected = new(98, 104);

    [Fact]
    public void A_meter_that_shows_the_same_of_an_altered_circuit_is_not_listed_yet_the_circuit_counts_as_altered()
    {
        var readings = new AlteredReadings();

        readings.Add(3, Expected, Expected);

        Assert.Empty(readings.ToResponse().Checks);
        Assert.False(readings.IsSameCircuit);
    }

    [Fact]
    public void What_a_meter_shows_otherwise_is_listed_with_its_check()
    {
        var readings = new AlteredReadings();

        readings.Add(3, Expected, new(98, 105));

        Assert.Equal(new ReadingInterval(98, 105), readings.ToResponse().At(3));
    }

    [Fact]
    public void Nothing_added_leaves_the_same_circuit_also_after_another_fault()
    {
        var readings = new AlteredReadings();
        readings.Add(3, Expected, new(98, 105));

        readings.Clear();

        Assert.True(readings.IsSameCircuit);
        Assert.Empty(readings.ToResponse().Checks);
    }
}
