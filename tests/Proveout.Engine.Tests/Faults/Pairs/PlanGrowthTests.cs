using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>A plan grows until every row has a check.</summary>
public sealed class PlanGrowthTests
{
    [Fact]
    public void Every_row_gets_a_check()
    {
        var dictionary = SmallDictionary.Of(4, [0], [1], [2], [3], []);
        int[][] rows = [[0, 1], [2, 4], [1, 4]];
        var added = PlanGrowth.Choose(dictionary, [], rows);
        Assert.All(rows, row => Assert.Contains(row, added.Contains));
        Assert.Equal(2, added.Count);
    }

    [Fact]
    public void A_row_that_the_plan_serves_already_adds_nothing() =>
        Assert.Empty(PlanGrowth.Choose(SmallDictionary.Of(2, [0], [1]), [1], [[0, 1]]));
}
