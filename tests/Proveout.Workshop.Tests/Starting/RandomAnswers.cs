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

    // Figures over their whole range; an answer in eight is left out.
    private static string Answer(StartQuestion question, Random random) =>
        random.Next(8) == 0 ? ""
        : question.Choice is { } choice ? choice.Choices[random.Next(choice.Choices.Count)].Answer
        : random.Next((int)question.Figure!.Least, (int)question.Figure.Most + 1).ToString(CultureInfo.InvariantCulture);
}
