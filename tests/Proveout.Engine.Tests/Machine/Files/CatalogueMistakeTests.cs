using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class CatalogueMistakeTests
{
    [Theory]
    [InlineData("terminals: [L, N]", "terminals: [L, ^NN]", "unknown-terminal", "NN", "`L`, `N`, `PE` and `L-OUT`")]
    [InlineData("terminals: [L, N]", "terminals: [L, ^L]", "duplicate-name", "L", "once")]
    [InlineData("rest: on", "rest: ^onn", "unknown-position", "onn", "`on`")]
    [InlineData("positions: [off, on]", "positions: [off, on, ^off]", "duplicate-name", "off", "once")]
    [InlineData("control: main", "control: ^mian", "unknown-control", "mian", "`main`")]
    [InlineData("closed-at: [on]", "closed-at: [^no]", "unknown-position", "no", "`off` and `on`")]
    [InlineData("24 V: V+,", "24 V: ^VV+,", "loose-node", "VV+", "`V+`")]
    [InlineData("between: [L, L-OUT]", "between: [L, ^L-OTU]", "loose-node", "L-OTU", "`L-OUT`")]
    [InlineData("between: [L, L-OUT]", "between: [L, ^L]", "loop", "L", "two different")]
    public void A_reference_inside_a_type_to_what_does_not_exist_is_reported(string right, string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.CatalogueText, right, wrong, rule, offending, mend);

    [Theory]
    [InlineData("kind: fuse", "kind: ^fues", "unknown-word", "fues", "`fuse`")]
    [InlineData("role: output", "role: ^ouput", "unknown-word", "ouput", "`output`")]
    [InlineData("protection: {kind: fuse, ", "^protection: {", "missing-key", "kind", "`fuse`")]
    [InlineData("between: [N, inner]", "between: ^[N]", "wrong-count", "between", "2")]
    [InlineData("forward: 0.4 V .. 0.8 V", "forward: ^0.8 V .. 0.4 V", "out-of-range", "0.8 V .. 0.4 V", "lower limit first")]
    [InlineData("forward: 0.4 V .. 0.8 V", "forward: ^0.4 V", "not-a-quantity", "0.4 V", "0.4 V .. 0.8 V")]
    [InlineData("value: 100 uF", "value: ^100 uf", "wrong-unit", "uf", "`uF`")]
    [InlineData("rating: 6.3 A", "^ratting: 6.3 A", "unknown-key", "ratting", "`rating`")]
    [InlineData("exposed: true", "exposed: ^yes", "wrong-type", "yes", "`true` or `false`")]
    [InlineData("letter: X", "letter: ^x", "bad-name", "x", "capital")]
    [InlineData("  board:", "  ^Board 2:", "bad-name", "Board 2", "small letters")]
    [InlineData("  board:", "  ^inlet:", "duplicate-name", "inlet", "own name")]
    public void A_wrong_word_quantity_or_name_is_reported(string right, string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.CatalogueText, right, wrong, rule, offending, mend);

    [Fact]
    public void A_slip_in_a_type_is_not_reported_again_at_each_place_that_refers_to_it()
    {
        var text = Sample.CatalogueText.Replace("L: {role: line, voltage: 240 V, current: 10 A}", "L: line", StringComparison.Ordinal);

        Assert.Equal(["wrong-type"], Sample.ReadCatalogue(text).Diagnostics.Select(diagnostic => diagnostic.Rule));
    }

    [Fact]
    public void A_type_that_two_files_name_is_reported_in_the_second()
    {
        var both = CatalogueReader.Read([new("a.yaml", Sample.CatalogueText), new("b.yaml", Sample.CatalogueText)]);

        Assert.Equal(["b.yaml:3:3", "b.yaml:21:3"], both.Diagnostics.Select(diagnostic => diagnostic.Place.ToString()));
        Assert.All(both.Diagnostics, diagnostic => Assert.Equal("duplicate-name", diagnostic.Rule));
        Assert.Contains("a.yaml:3:3", both.Diagnostics[0].Message, StringComparison.Ordinal);
    }
}
