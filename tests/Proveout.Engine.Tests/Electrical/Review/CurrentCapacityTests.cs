using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Review;

public sealed class CurrentCapacityTests
{
    // Base values of IEC 60364-5-52 table B.52.4, method B1, three loaded conductors at 30 °C, times 0.87 for 40 °C, as IEC 60204-1 table 6 rounds them.
    [Theory]
    [InlineData(1.5, 15.5)]
    [InlineData(2.5, 21)]
    [InlineData(4, 28)]
    [InlineData(6, 36)]
    [InlineData(10, 50)]
    public void Table_6_is_the_installation_table_at_40_degrees(double squareMillimetres, double at30) =>
        Assert.Equal(at30 * 0.87, CurrentCapacity.Of(squareMillimetres), 0.55);

    [Theory]
    [InlineData(0.14, 2)]
    [InlineData(0.25, 4.5)]
    [InlineData(0.5, 9)]
    public void Small_sizes_stay_below_the_guide_values_at_30_degrees(double squareMillimetres, double at30) =>
        Assert.InRange(CurrentCapacity.Of(squareMillimetres), 0.8 * at30, at30);

    [Fact]
    public void Capacity_rises_with_cross_section_and_ends_with_the_table()
    {
        var sizes = Enumerable.Range(1, 1200).Select(step => CurrentCapacity.Of(step * 0.01)).ToArray();
        Assert.All(sizes.Zip(sizes.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
        Assert.Equal(96, CurrentCapacity.Of(50));
    }
}
