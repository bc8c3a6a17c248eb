using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

public sealed class StartedMachineTests
{
    // What a review may find against answers that do not contradict each other: more load than a supply, its inlet or its fuses bear.
    private static readonly string[] Overloads = ["supply-budget", "terminal-bears-load", "fuse-bears-load"];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Whatever_is_answered_makes_a_machine_that_reads_and_reviews_clean_or_is_refused_in_sentences(int block)
    {
        var accepted = 0;
        for (var seed = block * 1000; seed < (block + 1) * 1000; seed++)
            if (IsSoundOrRefused(seed, RandomAnswers.Of(seed), "answers-contradict", "answers-overload"))
                accepted++;
        // Most random answers contradict each other: a valve or a spindle more than the outputs bear is enough.
        Assert.InRange(accepted, 20, 980);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Answers_that_fit_each_other_make_a_sound_machine_unless_its_loads_are_too_much(int block)
    {
        var accepted = 0;
        for (var seed = block * 250; seed < (block + 1) * 250; seed++)
            if (IsSoundOrRefused(seed, RandomAnswers.Fitting(seed), "answers-overload"))
                accepted++;
        Assert.InRange(accepted, 125, 249);
    }

    // True when a machine came of it, which then must hold what the start promises.
    private static bool IsSoundOrRefused(int seed, Dictionary<string, string> answers, params string[] refusals)
    {
        var started = StartedMachine.Of(answers, Samples.Files);
        Assert.All(started.Diagnostics, diagnostic => Assert.True(refusals.Contains(diagnostic.Rule) && diagnostic.Message.EndsWith('.') && diagnostic.Mend.EndsWith('.'), $"{seed}: {diagnostic}"));
        Assert.All(started.Diagnostics.Where(diagnostic => diagnostic.Rule == "answers-overload"), diagnostic => Assert.Contains(diagnostic.Place.File, Overloads));
        if (started.Value is not { } machine)
            return false;
        var catalogue = Samples.Files.Catalogue.Value!;
        Assert.Equal(machine.Design, MachineReader.Read([new("again.yaml", machine.Text)], catalogue).Value);
        Assert.Equal(machine.Design, MachineReader.Read([new("written.yaml", MachineWriter.Write(machine.Design, catalogue))], catalogue).Value);
        Assert.Equal(answers[StartQuestions.Name], machine.Design.Name);
        Assert.DoesNotContain(DesignReview.Of(machine.Design), finding => finding.Severity is FindingSeverity.Error or FindingSeverity.Warning);
        return true;
    }

    [Fact]
    public void Each_guess_names_a_part_or_conductor_of_the_machine_or_its_mains()
    {
        var machine = Required(("mains", "230"), ("plate", "mains"), ("hot-ends", "1"), ("motors", "5"));
        Assert.True(machine.Guesses.Count > 10);
        Assert.All(machine.Guesses, guess => Assert.True(
            guess.Thing == "mains" || machine.Design.FindPart(guess.Thing) is not null || machine.Design.Conductors.Any(conductor => conductor.Id == guess.Thing), $"{guess}"));
    }

    // Planning takes seconds for each machine, so three small ones stand for all.
    [Theory]
    [InlineData("none", "none", "four")]
    [InlineData("none", "none", "step-four")]
    [InlineData("230", "none", "four")]
    public void A_described_machine_has_a_plan_that_catches_mistakes(string mains, string plate, string board)
    {
        var machine = Required(("mains", mains), ("plate", plate), ("board", board), ("motors", "1"), ("axes", "1"), ("fans", "1"));
        var planned = PlannedMachine.Of(Samples.Files.Read([new("machine.yaml", machine.Text)], "machine.yaml").Value!, onlyGreedy: true);
        Assert.NotEmpty(planned.Plan.Checks);
    }

    [Theory]
    [InlineData("24 V supply", "supply", "350", "mains", "none")]
    [InlineData("24 V supply", "supply", "external-120")]
    [InlineData("Earthing of the house (IEC 60364-1)", "earthing", "it")]
    [InlineData("Heated plate", "plate", "mains", "mains", "none")]
    [InlineData("Heated plate", "plate", "mains", "mains", "120")]
    [InlineData("Emergency stop", "plate", "mains", "emergency-stop", "no")]
    [InlineData("Power of the plate", "plate", "low", "plate-power", "200")]
    [InlineData("Power of the plate", "plate", "mains", "plate-power", "20")]
    [InlineData("Stepper motors", "board", "four", "motors", "5")]
    [InlineData("Axes that find a stop", "motors", "2", "axes", "3")]
    [InlineData("Voltage of the hot end heaters", "hot-ends", "1", "hot-end-voltage", "12")]
    [InlineData("Controller board", "board", "step-four", "hot-ends", "1")]
    [InlineData("Hot end heaters", "board", "four", "plate", "low", "hot-ends", "2")]
    [InlineData("Spindle", "spindle", "socket", "mains", "none")]
    [InlineData("Spindle", "spindle", "socket", "plate", "mains")]
    [InlineData("Spindle", "spindle", "socket", "hot-ends", "2")]
    [InlineData("Emergency stop", "spindle", "socket", "emergency-stop", "no")]
    [InlineData("Valves", "valves", "1", "board", "step-four")]
    [InlineData("Valves", "valves", "2", "board", "four", "hot-ends", "1")]
    [InlineData("Fans", "board", "four", "fans", "3")]
    [InlineData("Voltage of the fans", "board", "four", "fans", "1", "fan-voltage", "12")]
    public void Answers_that_contradict_each_other_are_refused_at_their_question(string question, params string[] typed)
    {
        var refused = Of([.. typed.Chunk(2).Select(pair => (pair[0], pair[1]))]);
        Assert.Null(refused.Value);
        Assert.Contains(refused.Diagnostics, diagnostic => diagnostic.Rule == "answers-contradict" && diagnostic.Place.File.Contains(question, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("no-name", "name", " ")]
    [InlineData("no-such-answer", "mains", "400")]
    [InlineData("no-such-question", "colour", "green")]
    [InlineData("not-whole", "motors", "3.5")]
    public void What_cannot_be_read_is_refused(string rule, string name, string answer) =>
        Assert.Contains(Of((name, answer)).Diagnostics, diagnostic => diagnostic.Rule == rule);

    [Fact]
    public void The_smallest_supply_that_bears_the_loads_is_taken()
    {
        Assert.Equal("supply-24-150", Required(("motors", "3")).Design.FindPart("T1")!.Type.Id);
        Assert.Equal("supply-24-350", Required(("motors", "4"), ("hot-ends", "2"), ("hot-end-power", "50"), ("plate", "low")).Design.FindPart("T1")!.Type.Id);
    }

    [Fact]
    public void The_strongest_supply_is_used_up_to_what_it_bears_and_no_conductor_is_too_thin_for_that()
    {
        for (var watts = 60; watts <= 150; watts += 3)
            IsSoundOrRefused(
                watts,
                new() { [StartQuestions.Name] = "Hill bench", ["mains"] = "120", ["earthing"] = "tt", ["supply"] = "350", ["motors"] = "7", ["plate"] = "low", ["plate-power"] = $"{watts}", ["hot-ends"] = "2", ["hot-end-power"] = "50" },
                "answers-overload");
    }

    [Fact]
    public void More_load_than_the_strongest_supply_bears_is_refused_with_the_sums() =>
        Assert.Contains(Of(("mains", "none"), ("plate", "low"), ("plate-power", "150"), ("hot-ends", "2")).Diagnostics, diagnostic => diagnostic.Message.Contains("A with everything at work", StringComparison.Ordinal));

    [Fact]
    public void In_a_TT_system_a_residual_current_device_stands_behind_the_inlet()
    {
        Assert.Equal("residual-current-device-2", Required(("earthing", "tt")).Design.FindPart("F1")!.Type.Id);
        Assert.Null(Required(("earthing", "tn-s")).Design.FindPart("F1"));
    }

    [Theory]
    [InlineData("four", "tn-s")]
    [InlineData("seven", "tt")]
    [InlineData("step-four", "tn-c-s")]
    public void A_spindle_runs_after_the_start_button_stands_when_the_stop_is_pressed_and_stays_so_when_it_is_turned_back(string board, string earthing)
    {
        var machine = Required(("spindle", "socket"), ("board", board), ("earthing", earthing), ("motors", "1"), ("axes", "1"), ("fans", "0"));
        Assert.NotNull(machine.Design.FindPart("F1"));
        var model = new LiveModel(new WiringContext(WiringNetworkBuilder.Build(machine.Design)));

        Assert.InRange(Coil(ControlStateKind.Idle), 0, 0.001);
        Assert.InRange(Coil(ControlStateKind.Running), 0, 0.001);
        Assert.InRange(Coil(ControlStateKind.AllOutputs), 0.1, 0.25);
        Assert.InRange(Coil(ControlStateKind.Stopped), 0, 0.001);
        Assert.InRange(Coil(ControlStateKind.Released), 0, 0.001);

        double Coil(ControlStateKind kind) =>
            ConductorCurrents.Of(model, model.States.Last(state => state.Kind == kind)).Single(conductor => conductor.To.ToString() == "Q3.A1").Amperes;
    }

    [Theory]
    [InlineData("four")]
    [InlineData("seven")]
    public void A_valve_opens_by_its_output_and_shuts_with_the_emergency_stop(string board)
    {
        var machine = Required(("valves", "1"), ("board", board), ("hot-ends", "1"), ("motors", "1"), ("axes", "1"), ("fans", "0"));
        var model = new LiveModel(new WiringContext(WiringNetworkBuilder.Build(machine.Design)));

        Assert.InRange(Coil(ControlStateKind.AllOutputs), 0.2, 0.3);
        Assert.InRange(Coil(ControlStateKind.Stopped), 0, 0.001);

        double Coil(ControlStateKind kind) =>
            ConductorCurrents.Of(model, model.States.Last(state => state.Kind == kind)).Single(conductor => conductor.To.ToString() == "Q11.1").Amperes;
    }

    [Fact]
    public void A_guess_is_taken_out_of_the_text_only_where_it_still_stands()
    {
        var machine = Required();
        var guess = machine.Guesses[0];
        var text = new SourceText("machine.yaml", machine.Text);
        Assert.Equal(machine.Guesses.Count - 1, Guess.In([text with { Text = Guess.Without(text, guess.Line, guess.Words)! }]).Count);
        Assert.Null(Guess.Without(text, guess.Line + 1, guess.Words));
        Assert.Null(Guess.Without(text, 100_000, guess.Words));
    }

    [Fact]
    public void A_file_of_answers_is_read_or_refused_by_line()
    {
        Assert.Equal("3", AnswersFile.Read(new("answers.txt", "# mine\nname: A: b\nmotors: 3\n")).Value!["motors"]);
        Assert.Equal([2, 3], AnswersFile.Read(new("answers.txt", "motors: 3\nmotors: 4\nfour\n")).Diagnostics.Select(diagnostic => diagnostic.Place.Line));
    }

    private static StartedFile Required(params (string Name, string Answer)[] typed) =>
        Of(typed) is var started && started.Value is { } machine ? machine : throw new InvalidOperationException(string.Join('\n', started.Diagnostics));

    private static Outcome<StartedFile> Of(params (string Name, string Answer)[] typed)
    {
        var answers = typed.ToDictionary(each => each.Name, each => each.Answer, StringComparer.Ordinal);
        answers.TryAdd(StartQuestions.Name, "Hill bench");
        return StartedMachine.Of(answers, Samples.Files);
    }
}
