using Proveout.Engine.Heat;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Machine;

/// <summary>What a machine file says of what it heats.</summary>
public sealed class HeatedBodyTests
{
    private const string Block = "nozzle: {power: 60 W, uptake: 28 J/K, loss: 0.09 W/K, sensor: pt1000, pull-up: 4.7 kohm, target: 220 degC}";

    private static Outcome<MachineDesign> Read(string body) => Sample.Read($"{Sample.MachineText}\nheated:\n  {body}\n");

    [Fact]
    public void Every_sensor_that_a_file_may_name_is_one_that_the_model_knows() =>
        Assert.Equal(HeatSensorNames.All, SensorTypes.All.Select(type => type.Id));

    [Fact]
    public void What_is_heated_reads_again_as_it_is_written()
    {
        foreach (var design in new[] { Repository.Design("alderbrook"), Read(Block).Value! })
        {
            Assert.NotEmpty(design.Heated);
            var catalogue = design.Name == "Alderbrook" ? Repository.Catalogue : Sample.Catalogue;
            Assert.Equal(design, MachineReader.Read([new("again.yaml", MachineWriter.Write(design, catalogue))], catalogue).Value);
        }
    }

    [Fact]
    public void A_plate_of_the_sample_has_the_heat_capacity_of_its_aluminium() =>
        Assert.Equal(0.310 * 0.310 * 0.006 * 2700 * 897, HeatedBodies.HeaterOf(Repository.Design("alderbrook").Heated.Single(body => body.Name == "plate")).JoulesPerKelvin.At(0.5), 1e-6);

    [Theory]
    [InlineData("plate: 300 x 300 mm, uptake: 28 J/K, loss: 0.09 W/K", "missing-thickness", "plate-and-block")]
    [InlineData("plate: 300 x 300 x 6 mm, loss: 0.09 W/K", "plate-and-block")]
    [InlineData("uptake: 28 J/K", "missing-key")]
    [InlineData("uptake: 28 J/K, loss: 0.09 W/K, insulation: 20 mm", "unknown-key")]
    [InlineData("uptake: 28 J/K, loss: 0.09 W/K, heater: E99", "unknown-part")]
    [InlineData("uptake: 28 J/K, loss: 0.09 W, heater: E99", "wrong-unit")]
    public void What_cannot_be_heated_is_refused_in_its_place(string said, params string[] rules)
    {
        var read = Read($"nozzle: {{power: 60 W, sensor: pt1000, pull-up: 4.7 kohm, target: 220 degC, {said}}}");
        Assert.Null(read.Value);
        Assert.Subset(read.Diagnostics.Select(problem => problem.Rule).ToHashSet(), rules.ToHashSet());
        Assert.All(read.Diagnostics, problem => Assert.True(problem.Place.Line > 0 && problem.Mend.Length > 0));
    }

    [Fact]
    public void A_sensor_that_does_not_exist_is_answered_with_those_that_do() =>
        Assert.Contains("`pt1000`", Assert.Single(Read(Block.Replace("pt1000", "pt1001", StringComparison.Ordinal)).Diagnostics).Mend, StringComparison.Ordinal);
}
