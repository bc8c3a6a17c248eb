using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Review;

/// <summary>Who takes what from which supply, and what the emergency stop leaves.</summary>
public sealed class DemandTests
{
    private static readonly ReviewContext Flagship = new(WiringNetworkBuilder.Build(Repository.Design("alderbrook")));

    [Fact]
    public void The_5_V_of_the_controller_feeds_the_computer_and_its_display() =>
        Assert.Equal(
            ["A3", "P2"],
            Flagship.Demands.On(Reach("the 5 V of A1")).Where(demand => demand.WorstAmperes > 0.1).Select(demand => demand.Part).Order(StringComparer.Ordinal));

    [Fact]
    public void What_hangs_on_the_5_V_is_asked_of_the_24_V_over_the_efficiency_of_the_converter()
    {
        var below = Flagship.Demands.On(Reach("the 5 V of A1")).Sum(demand => demand.WorstAmperes);
        Assert.Contains(Flagship.Demands.On(Reach("the 24 V of T1")), demand => demand.Part == "A1" && Math.Abs(demand.WorstAmperes - (below * 5 / 24 / 0.85)) < 1e-9);
    }

    [Fact]
    public void A_heater_takes_all_while_warming_up_and_two_fifths_once_warm()
    {
        var nozzle = Assert.Single(Flagship.Demands.All, demand => demand.Part == "E2");
        Assert.Equal(24 / 9.6, nozzle.WarmUpAmperes, 0.02);
        Assert.Equal(0.4 * nozzle.WarmUpAmperes, nozzle.SteadyAmperes, 1e-9);
    }

    [Fact]
    public void Every_motor_hangs_on_the_driver_that_its_windings_are_wired_to() =>
        Assert.Equal(
            ["A1 M0 M1", "A1 M1 M2", "A1 M2 M3", "A1 M3 M4", "A1 M4 M5", "A1 M5 M6", "A2 M M7"],
            Flagship.MotorPhases.Select(phase => $"{phase.Driver.Designation} {phase.Output.Command} {phase.Winding.Subject}").Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void The_emergency_stop_leaves_the_fans_their_power_and_takes_it_from_the_plate()
    {
        var stopped = new StoppedMachine(Flagship, ["S2"]);
        var fan = Assert.Single(Flagship.Demands.All, demand => demand.Part == "G1");
        var plate = Assert.Single(Flagship.Demands.All, demand => demand.Part == "E1");
        Assert.True(stopped.IsPowered(fan.Fed, fan.Returned));
        Assert.False(stopped.IsPowered(plate.Fed, plate.Returned));
    }

    [Fact]
    public void Stop_category_1_lets_drives_brake_under_power()
    {
        var design = ReviewCaseTests.Read("emergency-stop", "fail");
        var chosen = design with { Review = new() { Choices = [new ReviewChoice(ReviewQuestions.StopCategory, "1", "The axis would fall.")] } };
        Assert.Equal(2, Emergency(design).Length);
        Assert.Equal(["E1"], Emergency(chosen));

        static string[] Emergency(MachineDesign machine) =>
            [.. DesignReview.Of(machine).Where(finding => finding.Rule == "emergency-stop").SelectMany(finding => finding.Subjects).Where(subject => subject != "S2")];
    }

    private static SupplyReach Reach(string name) => Assert.Single(Flagship.Supplies, reach => reach.Supply.Name == name);
}
