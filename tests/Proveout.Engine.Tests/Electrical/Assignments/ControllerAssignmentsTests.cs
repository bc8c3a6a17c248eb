using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Electrical.Live;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Assignments;

public sealed class ControllerAssignmentsTests
{
    public static TheoryData<string> Machines => [.. Repository.SampleNames];

    private static IReadOnlyList<OutputAssignment> Outputs(string sample) => ControllerAssignments.Outputs(LiveSamples.Model(sample));

    private static IReadOnlyList<InputAssignment> Inputs(string sample) => ControllerAssignments.Inputs(LiveSamples.Model(sample));

    [Fact]
    public void An_output_that_drives_a_relay_drives_the_heater_behind_it()
    {
        var relay = Outputs("alderbrook").Single(output => output is { Part: "A1", Command: "RLY" });

        Assert.Equal(["E1", "Q1"], relay.Loads.Select(load => load.Part).Order());
    }

    [Theory]
    [MemberData(nameof(Machines))]
    public void Every_stepper_motor_hangs_on_one_output_and_no_output_on_two(string sample)
    {
        var driven = Outputs(sample).Where(output => output.IsMotor).Select(output => Assert.Single(output.Loads).Part).ToArray();

        Assert.Equal(
            Repository.Design(sample).Parts.Where(part => part.Type.ClassLetter == "M" && part.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.Winding)).Select(part => part.Designation).Order(),
            driven.Order());
    }

    [Fact]
    public void The_current_of_a_heater_output_is_what_its_resistance_takes_from_24_volts()
    {
        var heater = Outputs("pennywort").Single(output => output.Loads.Any(load => load.Part == "E1"));

        // Ohm's law: 24 V over 14.4 ohm, less a few percent for leads, fuse and switch.
        Assert.InRange(heater.Current.Amperes, 0.93 * 24 / 14.4, 24 / 14.4);
    }

    [Fact]
    public void Two_motor_plugs_exchanged_in_the_design_exchange_their_motors()
    {
        var design = Repository.Design("pennywort");
        var exchanged = design with
        {
            Conductors = [.. design.Conductors.Select(conductor => conductor with { From = Exchange(conductor.From), To = Exchange(conductor.To) })],
        };

        var outputs = ControllerAssignments.Outputs(new LiveModel(new WiringContext(WiringNetworkBuilder.Build(exchanged))));

        Assert.Equal(("M2", "M1"), (MotorOf(outputs, "M0"), MotorOf(outputs, "M1")));
    }

    [Fact]
    public void A_stop_of_an_axis_that_opens_when_pressed_lifts_its_input_and_a_door_that_closes_pulls_it_down()
    {
        var inputs = Inputs("alderbrook");

        Assert.True(inputs.Single(input => input.Sensor == "B3").RisesWhenOperated);
        Assert.False(inputs.Single(input => input.Sensor == "B6").RisesWhenOperated);
    }

    [Fact]
    public void A_stop_that_takes_the_supply_away_is_no_input_of_the_board_that_loses_it() =>
        Assert.DoesNotContain(Inputs("alderbrook"), input => input.Sensor == "S2");

    [Fact]
    public void A_stop_that_the_controller_only_reads_is_one_of_its_inputs() =>
        Assert.Equal("HALT-S", Inputs("quarrymoor").Single(input => input.Sensor == "S2").Terminal);

    [Fact]
    public void Temperature_inputs_name_their_sensor_and_the_kind_that_both_sides_agree_on()
    {
        var inputs = Inputs("alderbrook");

        Assert.Equal(("E1", SensorKind.Ntc), (inputs.Single(input => input.Terminal == "TEMP0-S").Sensor, Assert.Single(inputs.Single(input => input.Terminal == "TEMP0-S").Kinds)));
        Assert.Equal(SensorKind.Pt1000, Assert.Single(Inputs("pennywort").Single(input => input.Terminal == "TEMP0-S").Kinds));
    }

    [Fact]
    public void The_stop_of_the_flagship_stops_both_heaters_and_every_motor()
    {
        var stop = Assert.Single(StopActions.Of(LiveSamples.Model("alderbrook")));

        Assert.Equal("S2", stop.Part);
        Assert.Empty(new[] { "E1", "E2", "M1", "M2", "M3", "M4", "M5", "M6", "M7" }.Except(stop.Stops));
    }

    [Fact]
    public void What_stays_off_after_a_stop_is_what_a_start_button_must_start_again()
    {
        // quarrymoor's contactor holds itself by its start button; pennywort has no stop that takes power.
        var stop = Assert.Single(StopActions.Of(LiveSamples.Model("quarrymoor")), action => action.Part == "S2");

        Assert.NotEmpty(stop.StaysOff);
        Assert.Empty(stop.StaysOff.Except(stop.Stops));
        Assert.Empty(StopActions.Of(LiveSamples.Model("pennywort")).SelectMany(action => action.StaysOff));
    }

    [Theory]
    [MemberData(nameof(Machines))]
    public void What_a_supply_gives_its_conductors_carry(string sample)
    {
        var model = LiveSamples.Model(sample);
        var everything = LiveSamples.State(model, ControlStateKind.AllOutputs);
        var wires = ConductorCurrents.Of(model, everything);

        // Kirchhoff's current law at the heaviest supply: its conductors at one pole carry its output between them.
        var supply = model.Sound(everything).Supplies.Where(supply => wires.Any(wire => wire.From.Part == supply.Part || wire.To.Part == supply.Part)).MaxBy(supply => supply.Amperes)!;
        var terminals = model.Context.Design.FindPart(supply.Part)!.Type.Terminals.Where(terminal => terminal.Role == TerminalRole.Positive).Select(terminal => new TerminalReference(supply.Part, terminal.Name)).ToHashSet();
        Assert.Equal(supply.Amperes, wires.Where(wire => terminals.Contains(wire.From) || terminals.Contains(wire.To)).Sum(wire => wire.Amperes), 0.02 * supply.Amperes);
    }

    private static string MotorOf(IReadOnlyList<OutputAssignment> outputs, string command) => Assert.Single(outputs.Single(output => output.Command == command).Loads).Part;

    private static TerminalReference Exchange(TerminalReference terminal) => terminal.Part != "A1" ? terminal : terminal.Terminal switch
    {
        ['M', '0', .. var rest] => new("A1", $"M1{rest}"),
        ['M', '1', .. var rest] => new("A1", $"M0{rest}"),
        _ => terminal,
    };
}
