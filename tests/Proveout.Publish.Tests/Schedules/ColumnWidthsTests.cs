using Proveout.Publish.Schedules;

namespace Proveout.Publish.Tests.Schedules;

public sealed class ColumnWidthsTests
{
    [Fact]
    public void A_column_too_narrow_for_its_words_takes_from_the_others_by_their_shares() =>
        Assert.Equal([40, 30, 30], ColumnWidths.Of([1, 3, 3], [40, 10, 10], 100));

    [Fact]
    public void Floors_that_do_not_fit_together_leave_the_shares_as_they_are() =>
        Assert.Equal([25, 75], ColumnWidths.Of([1, 3], [60, 60], 100));

    [Fact]
    public void Widths_always_fill_the_table_and_keep_every_floor_that_can_be_kept()
    {
        var random = new Random(7);
        for (var round = 0; round < 500; round++)
        {
            var count = random.Next(1, 8);
            double[] shares = [.. Enumerable.Range(0, count).Select(_ => 0.1 + random.NextDouble())];
            double[] floors = [.. Enumerable.Range(0, count).Select(_ => random.NextDouble() * 160 / count)];
            var widths = ColumnWidths.Of(shares, floors, 100);
            Assert.Equal(100, widths.Sum(), 9);
            if (floors.Sum() < 100)
                Assert.All(widths.Zip(floors), pair => Assert.True(pair.First >= pair.Second - 1e-9));
        }
    }
}
