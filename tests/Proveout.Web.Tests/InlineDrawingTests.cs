using Proveout.Web.Pages.Check;

namespace Proveout.Web.Tests;

public sealed class InlineDrawingTests
{
    [Fact]
    public void A_style_is_spelled_out_as_attributes_because_the_policy_ignores_it() =>
        Assert.Equal(
            "<svg><circle r=\"4\" fill=\"var(--lead-red, #c62828)\" stroke=\"currentColor\" /></svg>",
            InlineDrawing.From("<svg><circle r='4' style='fill:var(--lead-red, #c62828); stroke: currentColor; height: auto'/></svg>"));

    [Theory]
    [InlineData("<svg><script>alert(1)</script></svg>")]
    [InlineData("<svg onload='alert(1)'></svg>")]
    [InlineData("<svg><foreignObject><p>alert(1)</p></foreignObject></svg>")]
    [InlineData("<svg><a href='javascript:alert(1)'><text>here</text></a></svg>")]
    [InlineData("<svg><style>alert(1)</style></svg>")]
    public void What_could_act_is_left_out(string document) =>
        Assert.DoesNotContain("alert(1)", InlineDrawing.From(document), StringComparison.Ordinal);

    [Theory]
    [InlineData("<svg><g></svg>")]
    [InlineData("")]
    [InlineData(null)]
    public void What_is_no_drawing_leaves_none(string? document) => Assert.Equal("", InlineDrawing.From(document));
}
