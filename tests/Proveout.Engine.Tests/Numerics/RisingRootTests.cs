using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Roots against closed forms and MathNet.Numerics.</summary>
public sealed class RisingRootTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(5, 0.01)]
    [InlineData(-1000, 1e-6)]
    public void A_root_is_found_from_either_side_and_with_any_first_step(double start, double step) =>
        Assert.Equal(Math.Cbrt(2), RisingRoot.Of(x => (x * x * x) - 2, start, step), 1e-11);

    [Fact]
    public void A_root_with_an_upright_tangent_is_found() => Assert.Equal(0.3, RisingRoot.Of(x => Math.Sign(x - 0.3) * Math.Sqrt(Math.Abs(x - 0.3)), 7, 1), 1e-11);

    [Fact]
    public void A_kinked_function_is_no_trouble() => Assert.Equal(1.5, RisingRoot.Of(x => x < 1 ? 0.001 * (x - 1) - 50 : 100 * (x - 1.5), 0, 0.1), 1e-9);

    [Fact]
    public void Where_a_function_is_zero_over_a_stretch_one_of_its_roots_is_given()
    {
        var root = RisingRoot.Of(x => x < 2 ? x - 2 : x > 3 ? x - 3 : 0, 10, 1);
        Assert.InRange(root, 2 - 1e-9, 3 + 1e-9);
    }

    [Fact]
    public void A_function_that_never_passes_zero_is_refused() => Assert.Throws<ArgumentException>(() => RisingRoot.Of(x => Math.Exp(-x * x) + 1, 0, 1));

    [Fact]
    public void Roots_agree_with_MathNet() => Prop.ForAll<byte, byte, byte>((a, b, c) =>
    {
        double Function(double x) => ((a + 1) * x * Math.Abs(x)) + (b * x) - c;
        var theirs = MathNet.Numerics.RootFinding.Brent.FindRoot(Function, -1, 300, 1e-13, 1000);
        return Math.Abs(RisingRoot.Of(Function, 0, 0.5) - theirs) < 1e-8 * (1 + Math.Abs(theirs));
    }).QuickCheckThrowOnFailure();
}
