using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>Faults that no check tells apart.</summary>
public sealed class AmbiguityGroupTests
{
    [Fact]
    public void Faults_that_show_the_same_but_for_a_meters_last_digit_are_one_group_though_only_one_is_surely_caught()
    {
        // A sound machine shows 0 to 0.1: 0.1001 cannot be its reading, 0.0999 can.
        var dictionary = HandMade.Of(1, 0, new() { ["c0"] = new(0.1001, 5) }, new() { ["c0"] = new(0.0999, 5) }, new() { ["c0"] = new(0.3, 5) });

        var groups = AmbiguityGroup.Of(dictionary, [0, 1, 2]);

        Assert.Equal([[0, 1], [2]], groups.Select(group => group.Faults));
        Assert.Equal([true, false, true], Enumerable.Range(0, 3).Select(fault => dictionary.ChecksThatCatch(fault).Any()));
    }

    [Fact]
    public void Groups_come_in_the_order_in_which_their_first_fault_is_asked_for()
    {
        var dictionary = HandMade.Of(2, 0, new() { ["c0"] = HandMade.Open }, new() { ["c1"] = HandMade.Open }, new() { ["c0"] = HandMade.Open });

        Assert.Equal([[1], [0, 2]], AmbiguityGroup.Of(dictionary, [1, 2, 0]).Select(group => group.Faults));
    }
}
