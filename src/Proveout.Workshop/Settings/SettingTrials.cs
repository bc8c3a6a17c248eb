using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Trials of settings and the wrong settings that they show: with each output alone, each contact by hand, each sensor warmed, each axis by a jog, each guard made to act.</summary>
internal sealed class SettingTrials
{
    private const double JogMillimetres = 100;
    private const double JogError = 1;
    private const double GuardSeconds = 10;

    // Wrong steps have a cause: half or double microsteps or motor angle, another number of teeth.
    private static readonly (double Ratio, string Cause)[] Ratios =
        [(0.5, "half the steps, as of microsteps or of a motor of 0.9°"), (0.8, "a pulley of 16 teeth for one of 20"), (1.25, "a pulley of 20 teeth for one of 16"), (2, "twice the steps")];

    private static readonly ReadingInterval Right = new(1, 1);
    private static readonly ReadingInterval Wrong = new(0, 0);

    private readonly List<Fault> _faults = [];
    private readonly List<SettingTrial> _trials = [];

    private SettingTrials(SettingsCase machine)
    {
        AddOutputs(machine);
        AddInputs(machine);
        foreach (var axis in machine.Design.Motion.Axes.Where(axis => machine.Motors.Any(motor => motor.Axes.Any(share => share.Axis == axis.Name))))
            AddAxis(axis);
        foreach (var body in machine.Heat.Bodies)
            AddHeated(body);
    }

    /// <summary>The dictionary of a machine.</summary>
    public static FaultDictionary Of(SettingsCase machine)
    {
        var made = new SettingTrials(machine);
        return new(
            [SettingSetUps.Live(machine.Design)],
            [.. made._trials.Select(trial => trial.Check)],
            made._faults,
            [.. made._faults.Select(fault => ResponseOf(made._trials, fault.Id))]);
    }

    private static FaultResponse ResponseOf(List<SettingTrial> trials, string fault)
    {
        var shown = trials.Index().Where(trial => trial.Item.WrongBy.ContainsKey(fault)).ToArray();
        return new([.. shown.Select(trial => trial.Index)], [.. shown.Select(trial => trial.Item.WrongBy[fault])]);
    }

    private void AddOutputs(SettingsCase machine)
    {
        OutputAssignment[] outputs = [.. machine.Outputs.Where(output => output.Loads.Count > 0)];
        var exchanged = new List<(string Fault, OutputAssignment One, OutputAssignment Other)>();
        foreach (var (one, other) in outputs.Zip(outputs.Skip(1)).Where(pair => pair.First.Part == pair.Second.Part && pair.First.IsMotor == pair.Second.IsMotor))
        {
            var heats = one.Loads.Concat(other.Loads).Any(load => load.AtWork == "gets warm");
            var id = PlainNames.Of($"outputs exchanged {one.Part} {one.Command} {other.Command}");
            exchanged.Add((id, one, other));
            AddFault(
                id, "outputs-exchanged", $"Outputs {one.Command} and {other.Command} of {one.Part} are set for each other's loads.", [one.Part],
                heats ? Severity.Fire : Severity.DoesNotWork,
                heats ? "A heater is switched by what should switch something else: it heats without its own sensor." : $"{Names(one)} works when {Names(other)} should.");
        }

        foreach (var output in outputs)
            Add(
                "output", $"{output.Part} {output.Command}", $"Command output {output.Command} of {output.Part} alone, for two seconds.",
                $"{Names(output)} works, nothing else (1 for yes, 0 for no).",
                Right,
                exchanged.Where(pair => pair.One == output || pair.Other == output).ToDictionary(pair => pair.Fault, _ => Wrong));
    }

    private void AddInputs(SettingsCase machine)
    {
        var inputs = machine.Inputs;
        foreach (var input in inputs)
        {
            var id = PlainNames.Of($"{input.Part} {input.Terminal} {input.Sensor}");
            var shows = new Dictionary<string, ReadingInterval>();
            if (input.IsContact)
                AddFault($"inverted-{id}", "input-inverted", $"Input {input.Terminal} of {input.Part} is set the wrong way round for {input.Sensor}.", [input.Part, input.Sensor], Severity.Damage, "An axis does not stop at its stop, or never starts: it crashes.", shows);
            foreach (var other in inputs.Where(other => other.Part == input.Part && other.Terminal != input.Terminal && other.IsContact == input.IsContact))
                AddFault(
                    PlainNames.Of($"inputs exchanged {id} {other.Terminal} {other.Sensor}"), "inputs-exchanged",
                    $"Input {input.Terminal} of {input.Part} is read as what hangs on {other.Terminal}, {other.Sensor}.", [input.Part, input.Sensor, other.Sensor],
                    input.IsContact ? Severity.Damage : Severity.Fire,
                    input.IsContact ? "The wrong axis stops: another crashes." : "A heater is governed by another's sensor and heats without an end.", shows);
            Add(
                "input", $"{input.Part} {input.Terminal}, {input.Sensor}",
                input.IsContact ? $"Operate {input.Sensor} by hand while the controller shows its inputs." : $"Warm {input.Sensor} by hand, or name the thing that changes it, while the controller shows its inputs.",
                $"The one of {input.Sensor} changes the right way, no other does (1 for yes, 0 for no).",
                Right,
                shows);
        }
    }

    private void AddAxis(Axis axis)
    {
        var jog = new Dictionary<string, ReadingInterval>();
        foreach (var (ratio, cause) in Ratios)
            AddFault(PlainNames.Of(string.Create(CultureInfo.InvariantCulture, $"steps {axis.Name} {ratio}")), "steps-wrong", $"Steps of {axis.Name} are off: {cause}.", [axis.Name], ratio > 1 ? Severity.Damage : Severity.DoesNotWork, ratio > 1 ? "It goes farther than it is told, and crashes at its end." : "All lengths come out short.", jog, Jog(ratio));
        AddFault(PlainNames.Of($"reversed {axis.Name}"), "direction-reversed", $"Axis {axis.Name} is set the wrong way round.", [axis.Name], Severity.Damage, "It runs away from its stop into its other end.", jog, Jog(-1));
        Add("jog", axis.Name, string.Create(CultureInfo.InvariantCulture, $"From the middle, a hand at the stop, jog {axis.Name} by {JogMillimetres:0} mm and measure with a rule; minus when it goes the other way."), "It goes as far as told, the way it should.", Jog(1), jog, "mm");
        var limits = new Dictionary<string, ReadingInterval>();
        AddFault(PlainNames.Of($"travel {axis.Name} too long"), "travel-too-long", $"The travel of {axis.Name} is set longer than it is.", [axis.Name], Severity.Damage, "It crashes at its end at full speed.", limits);
        Add("travel", axis.Name, $"Drive {axis.Name} slowly to both ends of its set travel, a hand at the stop.", "A millimetre or more is left before anything touches (1 for yes, 0 for no).", Right, limits);
    }

    private void AddHeated(HeatedView body)
    {
        var guard = new Dictionary<string, ReadingInterval>();
        AddFault(PlainNames.Of($"guard off {body.Name}"), "guard-off", $"The guard of {body.Name} is off, or loosened until it no longer acts.", [body.Name], Severity.Fire, "A sensor that falls out is not noticed: it heats without an end.", guard, new(double.BitIncrement(GuardSeconds), double.PositiveInfinity));
        Add("guard", body.Name, $"With {body.Name} at 60 °C, a hand at the plug: pull its sensor's plug where that is outside every space with mains; elsewhere isolate, pull it, close the space, switch on and command heat.", "Seconds until the heater is off for good; 0 when it never comes on.", new(0, GuardSeconds), guard, "s");
        var limit = new Dictionary<string, ReadingInterval>();
        AddFault(PlainNames.Of($"limit {body.Name} too high"), "limit-too-high", $"The temperature above which {body.Name} is switched off is higher than what something at it bears.", [body.Name], Severity.Fire, "Liner, bond or magnet gives way first, and fumes.", limit);
        Add("limit", body.Name, $"Read the temperature at which {body.Name} is switched off from the controller itself, and compare with the least that anything at it bears.", "It is lower (1 for yes, 0 for no).", Right, limit);
    }

    private static ReadingInterval Jog(double ratio) => new((ratio * JogMillimetres) - JogError, (ratio * JogMillimetres) + JogError);

    private static string Names(OutputAssignment output) => string.Join(" and ", output.Loads.Select(load => load.Part));

    private void AddFault(string id, string kind, string sentence, string[] subjects, Severity severity, string consequence, Dictionary<string, ReadingInterval> shows, ReadingInterval? shown = null)
    {
        AddFault(id, kind, sentence, subjects, severity, consequence);
        shows[id] = shown ?? Wrong;
    }

    // Common practice: about one setting in fifty is entered wrong by a careful person.
    private void AddFault(string id, string kind, string sentence, string[] subjects, Severity severity, string consequence) =>
        _faults.Add(new(id, kind, sentence, [.. subjects], severity, consequence, 0.02, "reading the settings back aloud, by a second person"));

    private void Add(string kind, string what, string instruction, string right, ReadingInterval expectation, Dictionary<string, ReadingInterval> wrongBy, string unit = "") =>
        _trials.Add(new(
            new Check(PlainNames.Of($"{kind} {what}"), kind, SettingSetUps.Id, $"{Title(kind)} {what}", $"{instruction} {right}", [], unit, expectation, right, 30)
            {
                // Nothing is heated, or driven to its end, before outputs, inputs and the way of the axes are right.
                DoLast = kind is "guard" or "travel",
            },
            wrongBy));

    private static string Title(string kind) => kind switch
    {
        "output" => "Output",
        "input" => "Input",
        "jog" => "Jog of",
        "travel" => "Travel of",
        "guard" => "Guard of",
        _ => "Limit of",
    };
}
