using Proveout.Engine.Heat;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Machine;

/// <summary>What a machine file says of its bays.</summary>
public sealed class BayTests
{
    private const string Good =
        "inside: 300 x 200 x 80 mm, parts: [E1], wall: {material: plastic, thickness: 3 mm, covered: [back, bottom]}, room: 35 degC, altitude: 500 m, "
        + "openings: {fan: {size: 40 x 40 mm, open: 80 %, bends: 1, filter: {flow: 10 m3/h, clean: 5 Pa, loaded: 12 Pa}, "
        + "fan: {part: A1, blows: in, most-flow: 12 m3/h, most-pressure: 30 Pa, points: [{flow: 4 m3/h, pressure: 25 Pa}, {flow: 8 m3/h, pressure: 12 Pa}], in-series: 2, scatter: 12 %, turns-a-minute: 5200}}}, "
        + "contents: {A1: {least-heat: 2 W, most-heat: 6 W, air-limit: 60 degC, above-air: 8 K}}";

    private static Outcome<MachineDesign> Read(string bay) => Sample.Read($"{Sample.MachineText}\nbays:\n  bay: {{{bay}}}\n");

    [Fact]
    public void Bays_read_again_as_they_are_written()
    {
        foreach (var design in new[] { Repository.Design("alderbrook"), Read(Good).Value! })
        {
            Assert.NotEmpty(design.Bays);
            var catalogue = design.Name == "Alderbrook" ? Repository.Catalogue : Sample.Catalogue;
            Assert.Equal(design, MachineReader.Read([new("again.yaml", MachineWriter.Write(design, catalogue))], catalogue).Value);
        }
    }

    [Fact]
    public void What_is_on_its_surface_what_is_named_and_its_fans_are_in_it()
    {
        var design = Repository.Design("alderbrook");
        var inside = BayParts.Of(design, design.Bays[0]).Select(part => part.Designation).ToArray();
        Assert.Superset(new HashSet<string> { "T1", "A1", "A3", "Q1", "K1", "G1", "G2", "B9" }, inside.ToHashSet());
        Assert.DoesNotContain("E1", inside);
        Assert.Equal(["A1", "E1"], BayParts.Of(Read(Good).Value!, Read(Good).Value!.Bays[0]).Select(part => part.Designation));
    }

    // By hand: 40 x 40 mm, 80 % free; 0.3 to 1.5 before a fan and 1.1 to 1.3 for its bend; two fans in a row give twice the pressure; a new filter differs by a fifth.
    [Fact]
    public void The_model_of_its_air_has_what_the_file_says()
    {
        var design = Read(Good).Value!;
        var air = BayAirs.Of(design, design.Bays[0], new(3, 5), 6, []);
        var opening = Assert.Single(air.Openings);
        Assert.Equal(0.04 * 0.04 * 0.8, opening.SquareMetres.At(0.5), 1e-12);
        Assert.Equal((1.4, 2.8), (Math.Round(opening.Coefficient.Low, 9), Math.Round(opening.Coefficient.High, 9)));
        Assert.Equal((4, 6), (Math.Round(opening.Filter!.Pascals.Low, 9), Math.Round(opening.Filter.Pascals.High, 9)));
        Assert.Equal(12, opening.Filter.LoadedPascals);
        var fan = opening.Fan!;
        Assert.Equal((false, 60, 24, 0.0), (fan.BlowsOut, fan.Curve.MostPascals, Math.Round(fan.Curve.PascalsAt(8.0 / 3600), 9), Math.Round(fan.Curve.PascalsAt(12.0 / 3600), 9)));
        Assert.Equal((0.88, 1.12, 5200), (fan.Speed.Low, fan.Speed.High, fan.TurnsAMinute!.Value));
        Assert.Equal((500, 35, 15), (air.AltitudeMetres, air.RoomCelsius.High, air.RoomCelsius.Low));
    }

    [Theory]
    [InlineData("300 x 200 x 80 mm", "300 x 200 mm", "missing-depth")]
    [InlineData("parts: [E1]", "parts: [E9]", "unknown-part")]
    [InlineData("parts: [E1]", "surface: shelf", "unknown-surface")]
    [InlineData("contents: {A1", "contents: {A9", "unknown-part")]
    [InlineData("part: A1", "part: G1", "unknown-part")]
    [InlineData("clean: 5 Pa", "clean: 15 Pa", "out-of-order")]
    [InlineData("open: 80 %", "open: 120 %", "out-of-range")]
    [InlineData("scatter: 12 %", "scatter: 60 %", "out-of-range")]
    [InlineData("least-heat: 2 W", "least-heat: 7 W", "out-of-order")]
    [InlineData("most-heat: 6 W, ", "", "missing-key")]
    [InlineData("{flow: 8 m3/h, pressure: 12 Pa}", "{flow: 8 m3/h, pressure: 28 Pa}", "rising-curve")]
    [InlineData("{flow: 8 m3/h, pressure: 12 Pa}", "{flow: 13 m3/h, pressure: 12 Pa}", "out-of-order")]
    [InlineData("blows: in", "blows: up", "unknown-word")]
    [InlineData("12 m3/h", "12 l/s", "wrong-unit")]
    [InlineData("material: plastic", "material: glass", "unknown-word")]
    public void What_cannot_be_is_refused_in_its_place(string good, string bad, string rule)
    {
        var read = Read(Good.Replace(good, bad, StringComparison.Ordinal));
        Assert.Null(read.Value);
        Assert.Contains(read.Diagnostics, problem => problem.Rule == rule && problem.Place.Line > 0 && problem.Mend.Length > 0);
    }
}
