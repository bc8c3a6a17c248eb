using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests.Asking;

public sealed class SymptomMatchTests
{
    // Named as the campaign names them; the words are those of our samples.
    private static readonly Check[] Symptoms =
    [
        Of("stays-in-x1-fuse-switch-on", "the fuse of X1 (Mains inlet) stays in"),
        Of("stays-in-a2-fan-fuse-switch-on", "the fan fuse of A2 (Tool-head board) stays in"),
        Of("residual-on-nothing-commanded", "the residual-current device before the outlet stays in"),
        Of("tingle-u1-switch-on", "nobody has felt a tingle at U1 (Machine frame) (do not touch to find out: measure)"),
        Of("tingle-e1-switch-on", "nobody has felt a tingle at E1 (Plate heater) (do not touch to find out: measure)"),
        Of("works-a1", "A1 (Motion controller) comes up"),
        Of("works-a3", "A3 (Computer, stacked on A1) comes up"),
        Of("works-p1", "P1 (Mains present) lights"),
        Of("works-p2", "P2 (Display) shows a picture"),
        Of("works-e3", "E3 (Chamber light) lights"),
        Of("works-k1", "K1 (Run relay) pulls in"),
        Of("works-e1", "E1 (Plate heater) gets warm"),
        Of("works-e2", "E2 (Nozzle heater) gets warm"),
        Of("works-q5", "Q5 (Dispensing valve) pulls in"),
        Of("works-g1", "G1 (Bay fan, left) turns at full output"),
        Of("works-g7", "G7 (Hot end cooling) turns at full output"),
        Of("works-m1", "M1 (Long axis) holds and turns"),
        Of("works-m2", "M2 (Cross axis) holds and turns"),
        Of("quiet-m1", "M1 (Long axis) neither hums nor twitches in place of turning"),
        Of("quiet-m2", "M2 (Cross axis) neither hums nor twitches in place of turning"),
        Of("direction-m1", "M1 (Long axis) turns the way that it is told"),
        Of("direction-m2", "M2 (Cross axis) turns the way that it is told"),
        Of("rests-g1", "G1 (Bay fan, left) stands still"),
        Of("rests-g7", "G7 (Hot end cooling) stands still"),
        Of("rests-e1", "E1 (Plate heater) stays cold"),
        Of("rests-e2", "E2 (Nozzle heater) stays cold"),
        Of("off-e3", "E3 (Chamber light) stays dark"),
        Of("stop-s2-pressed", "A1, M1, M2, E1, G1 and K1 stop and stay off while every output is commanded"),
        Of("released-s2", "M1, M2 and E1 stay off until started again"),
    ];

    [Theory]
    [InlineData("My fans do not turn", "works-g1 works-g7")]
    [InlineData("the left bay fan doesn't spin", "works-g1")]
    [InlineData("hot end fan is dead", "works-g7")]
    [InlineData("G7 does nothing", "works-g7")]
    [InlineData("The blower in the bay won't start.", "works-g1")]
    [InlineData("bed does not heat", "works-e1")]
    [InlineData("The heated bed stays cold", "works-e1")]
    [InlineData("Nozzle won't heat up", "works-e2")]
    [InlineData("hotend heater is not getting warm", "works-e2")]
    [InlineData("The screen stays black", "works-p2")]
    [InlineData("Nothing on the display", "works-p2")]
    [InlineData("my touchscreen is blank", "works-p2")]
    [InlineData("the chamber light does not come on", "works-e3")]
    [InlineData("no light in the enclosure", "works-e3")]
    [InlineData("the computer never boots", "works-a3")]
    [InlineData("Motion controller is dead", "works-a1")]
    [InlineData("the valve does not open", "works-q5")]
    [InlineData("run relay does not click", "works-k1")]
    [InlineData("Long axis motor does not move", "works-m1")]
    [InlineData("M2 won't hold", "works-m2")]
    [InlineData("both steppers are dead", "works-m1 works-m2")]
    [InlineData("the motor on the long axis just hums", "quiet-m1")]
    [InlineData("M2 buzzes and shakes but does not turn", "quiet-m2")]
    [InlineData("Cross axis stutters", "quiet-m2")]
    [InlineData("motors vibrate instead of turning", "quiet-m1 quiet-m2")]
    [InlineData("The long axis goes the wrong way", "direction-m1")]
    [InlineData("M1 runs backwards", "direction-m1")]
    [InlineData("my cross axis is mirrored", "direction-m2")]
    [InlineData("the steppers turn in reverse", "direction-m1 direction-m2")]
    [InlineData("hot end cooling is always on", "rests-g7")]
    [InlineData("The fans never stop", "rests-g1 rests-g7")]
    [InlineData("bed heats even with everything off", "rests-e1")]
    [InlineData("Nozzle stays hot with nothing commanded", "rests-e2")]
    [InlineData("chamber light won't go out", "off-e3")]
    [InlineData("the fuse in the mains inlet blows when I switch on", "stays-in-x1-fuse-switch-on")]
    [InlineData("fan fuse on the tool-head board keeps blowing", "stays-in-a2-fan-fuse-switch-on")]
    [InlineData("My RCD trips", "residual-on-nothing-commanded")]
    [InlineData("the ground fault breaker goes out at once", "residual-on-nothing-commanded")]
    [InlineData("I feel a tingle on the frame", "tingle-u1-switch-on")]
    [InlineData("got a shock from the plate", "tingle-e1-switch-on")]
    [InlineData("The e-stop does not stop the motors", "stop-s2-pressed")]
    [InlineData("it keeps running when I press the red button", "stop-s2-pressed")]
    [InlineData("everything starts again by itself after I twist the stop", "released-s2")]
    public void A_sentence_finds_the_symptoms_that_it_means(string sentence, string expected) => Assert.Equal(
        expected.Split(' '), SymptomMatch.Of(sentence, Symptoms).Select(symptom => symptom.Id["symptom-".Length..]));

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("my fans")]
    [InlineData("it does not work")]
    [InlineData("the soup is not warm enough for my uncle's parrot")]
    public void What_does_not_say_what_is_wrong_or_with_what_is_matched_to_nothing_certain(string sentence) =>
        Assert.True(SymptomMatch.Of(sentence, Symptoms) is { Count: 0 } or { Count: > 1 });

    [Fact]
    public void Nothing_is_proposed_that_the_machine_does_not_show() => Assert.Empty(SymptomMatch.Of("my fans do not turn", []));

    private static Check Of(string id, string title) => new($"symptom-{id}", "seen", "in-use", title, "", [], "", new ReadingInterval(1, 1), "", 1);
}
