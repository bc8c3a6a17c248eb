using System.Globalization;
using System.Text;
using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>An answer as plain text, to paste under a question where people help each other.</summary>
public static class AskText
{
    private const int MostSuspects = 5;

    /// <summary>The text.</summary>
    public static string Of(AskView view)
    {
        var text = new StringBuilder();
        Line($"Machine: {view.Machine.Name}");
        foreach (var group in view.Groups)
            foreach (var symptom in group.Symptoms)
                if (symptom.IsBad is { } isBad)
                    Line($"{(isBad ? "NOT so" : "So")}, {group.SetUp.Title}: {symptom.Check.Title}");
        Line("");
        Line(view.Suspects.Count == 0 ? "None of the mistakes that Proveout knows of explains this." : "It can be:");
        foreach (var suspect in view.Suspects.Take(MostSuspects))
            Line($"- {ShareWords.Of(suspect.Probability)}: {suspect.Sentence} {suspect.Consequence}");
        if (view.Suspects.Count > MostSuspects)
            Line(string.Create(CultureInfo.InvariantCulture, $"- and {view.Suspects.Count - MostSuspects} less likely"));
        if (view.Next is { } next)
        {
            Line("");
            foreach (var caution in view.NextSetUp?.Cautions ?? [])
                Line($"CAUTION: {caution}");
            Line($"Check next, {view.NextSetUp?.Title}: {next.Instruction} Sound, it reads {CheckWords.Expected(next)}.");
        }

        Line("");
        Line("Asked with: proveout ask MACHINE " + string.Join(' ', view.Groups.SelectMany(group => group.Symptoms)
            .Where(symptom => symptom.IsBad is not null)
            .Select(symptom => $"{(symptom.IsBad == true ? "--bad" : "--good")} {symptom.Check.Id}")));
        return text.ToString();

        void Line(string line) => text.Append(line).Append('\n');
    }
}
