using System.Globalization;

namespace Proveout.Workshop.Tests;

/// <summary>Answers to the guided start as they may come, sensible or not, the same for the same seed.</summary>
internal static class RandomAnswers
{
    public static Dictionary<string, string> Of(int seed)
    {
        var random = new Random(seed);
        var answers = StartQuestions.Groups.SelectMany(group => group.Questions).ToDictionary(question => question.Name, question => Answer(question, random), StringComparer.Ordinal);
        answers[StartQuestions.Name] = $"Machine \"{seed}\": it's # one";
        return answers;
    }

    /// <summary>Answers that fit each other; only their loads may be too much for a supply.</summary>
    public static Dictionary<string, string> Fitting(int seed)
    {
        var random = new Random(seed);
        string Of(params string[] among) => among[random.Next(among.Length)];
        int UpTo(int least, int most) => random.Next(least, most + 1);
        var (mains, board) = (Of("none", "120", "230"), Of("seven", "four", "step-four"));
        var plate = board == "step-four" ? "none" : mains == "230" ? Of("none", "low", "mains") : Of("none", "low");
        var (motors, fans) = (UpTo(1, board == "seven" ? 7 : 4), UpTo(0, board == "seven" ? 5 : board == "four" ? 2 : 4));
        var hotEnds = board == "step-four" ? 0 : UpTo(0, board == "four" && plate != "none" ? 1 : 2);
        var free = 2 - hotEnds - (board == "four" && plate != "none" ? 1 : 0);
        var hasSpindle = mains != "none" && plate != "mains" && free > 0 && UpTo(0, 1) == 1;
        return new(StringComparer.Ordinal)
        {
            [StartQuestions.Name] = $"Machine {seed}",
            ["mains"] = mains,
            ["earthing"] = Of("unknown", "tn-s", "tn-c-s", "tt"),
            ["inlet"] = Of("switched", "fused"),
            ["supply"] = mains == "none" ? Of("fitting", "external-120") : Of("fitting", "fitting", "150", "200", "350"),
            ["emergency-stop"] = plate == "mains" || hasSpindle ? "yes" : Of("yes", "no"),
            ["frame"] = Of("metal", "other"),
            ["enclosure"] = Of("metal", "other", "none"),
            ["board"] = board,
            ["motors"] = Text(motors),
            ["axes"] = Text(UpTo(1, Math.Min(motors, 6))),
            ["plate"] = plate,
            ["plate-power"] = plate == "mains" ? Text(UpTo(50, 836)) : plate == "low" ? Text(UpTo(10, 150)) : "",
            ["hot-ends"] = Text(hotEnds),
            ["spindle"] = hasSpindle ? "socket" : "none",
            ["valves"] = board == "step-four" ? "0" : Text(UpTo(0, free - (hasSpindle ? 1 : 0))),
            ["hot-end-power"] = Text(UpTo(5, 60)),
            ["sensor"] = Of("ntc", "pt1000"),
            ["fans"] = Text(fans),
            ["fan-voltage"] = board == "seven" ? Of("24", "12", "5") : board == "four" ? Of("24", "5") : "24",
        };
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    // Figures over their whole range; an answer in eight is left out.
    private static string Answer(StartQuestion question, Random random) =>
        random.Next(8) == 0 ? ""
        : question.Choice is { } choice ? choice.Choices[random.Next(choice.Choices.Count)].Answer
        : Text(random.Next((int)question.Figure!.Least, (int)question.Figure.Most + 1));
}
