using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Machine;

public sealed class BeltFileTests
{
    private static readonly SourceText[] Texts = Repository.Texts(Repository.Folder("samples", "alderbrook"));

    [Fact]
    public void Belts_that_are_written_read_as_equal_belts()
    {
        var design = Repository.Design("alderbrook");

        var read = MachineReader.Read([new("written.yaml", MachineWriter.Write(design, Repository.Catalogue))], Repository.Catalogue);

        Assert.Equal(design.Motion, read.Value?.Motion);
        Assert.NotEmpty(design.Motion.Belts);
    }

    [Theory]
    [InlineData("x + 20 mm", 20, "x", 1)]
    [InlineData("340 mm - y", 340, "y", -1)]
    [InlineData("0.5 z-1,5 cm", -15, "z", 0.5)]
    [InlineData("-w2", 0, "w2", -1)]
    public void A_coordinate_may_ride_on_an_axis(string text, double millimetres, string axis, double factor)
    {
        var riding = Riding.TryParse(text)!;

        Assert.Equal((millimetres, new AxisShare(axis, factor)), (riding.Fixed.Millimeters, Assert.Single(riding.Shares)));
        Assert.Equal(riding, Riding.TryParse(riding.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("20")]
    [InlineData("mm")]
    [InlineData("x y")]
    [InlineData("x +")]
    [InlineData("x * 2")]
    public void What_is_no_coordinate_is_none(string text) => Assert.Null(Riding.TryParse(text));

    [Theory]
    [InlineData("{at: beam-left-upper, turn: left}", "{at: beam-left-uper, turn: left}", "unknown-point", "beam-left-upper")]
    [InlineData("at: [-37.254 mm, y + 20 mm]", "at: [-37.254 mm, yy + 20 mm]", "unknown-axis", "`y`")]
    [InlineData("{motor: M1}", "{motor: M11}", "unknown-part", "")]
    [InlineData("{motor: M2}", "{motor: M1}", "motor-twice", "`shaft`")]
    [InlineData("{from: 0 mm, to: 250 mm}", "{from: 250 mm, to: 0 mm}", "no-travel", "`from`")]
    [InlineData("{at: beam-left-upper, turn: left}", "{at: beam-left-upper}", "wrong-turn", "`turn: left`")]
    [InlineData("{at: head-left-upper}", "{at: head-left-upper, turn: left}", "wrong-turn", "Leave `turn` out")]
    [InlineData("{at: head-left-upper}", "{at: pulley-m2, turn: left}", "wrong-end", "`closed: true`")]
    [InlineData("kind: smooth, diameter: 12 mm", "kind: smooth", "missing-key", "`diameter`")]
    [InlineData("kind: smooth, diameter: 12 mm", "kind: smooth, teeth: 12, diameter: 12 mm", "unknown-key", "other kind")]
    [InlineData("teeth: 80, pitch: 2 mm, plane: lift-front-left", "teeth: 300, pitch: 2 mm, plane: lift-front-left", "no-room", "sizes")]
    [InlineData("teeth: 80, pitch: 2 mm, plane: lift-front-left", "teeth: 80, pitch: 2.032 mm, plane: lift-front-left", "pitches-differ", "one profile")]
    [InlineData("teeth: 80, pitch: 2 mm, plane: lift-front-left", "teeth: 80.5, pitch: 2 mm, plane: lift-front-left", "out-of-range", "whole number")]
    [InlineData("  z: {from", "  mm: {from: 0 mm, to: 1 mm}\n  z: {from", "bad-name", "no unit")]
    [InlineData("- {at: pulley-m3, turn: left}", "- {at: pulley-m3, turn: left, half-turn: true}", "odd-twist", "even number")]
    public void A_slip_is_said_with_what_to_do(string right, string wrong, string rule, string mend)
    {
        var belts = Texts.Single(text => text.File == "belts.yaml");
        Assert.Contains(right, belts.Text, StringComparison.Ordinal);
        var at = belts.Text.IndexOf(right, StringComparison.Ordinal);
        SourceText spoiled = new("belts.yaml", belts.Text[..at] + wrong + belts.Text[(at + right.Length)..]);

        var diagnostics = MachineReader.Read([.. Texts.Select(text => text == belts ? spoiled : text)], Repository.Catalogue).Diagnostics;

        var found = Assert.Single(diagnostics, diagnostic => diagnostic.Rule == rule);
        Assert.Equal("belts.yaml", found.Place.File);
        Assert.Contains(mend, found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_belt_with_one_point_is_refused()
    {
        var belts = Texts.Single(text => text.File == "belts.yaml");
        SourceText more = new("belts.yaml", belts.Text + "  stray:\n    pitch: 2 mm\n    width: 6 mm\n    teeth: left\n    path: [{at: head-left-upper}]\n");

        Assert.Contains(MachineReader.Read([.. Texts.Select(text => text == belts ? more : text)], Repository.Catalogue).Diagnostics, found => found.Rule == "short-path");
    }
}
