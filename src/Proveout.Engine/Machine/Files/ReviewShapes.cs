using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How what a machine says to the review of its design stands in a file.</summary>
internal static class ReviewShapes
{
    private static readonly RecordShape<ValueList<ReviewChoice>> Choices = new(
        "list of choices",
        [
            .. ReviewQuestions.All.Select(question => Key<ValueList<ReviewChoice>>.Optional(
                question.Name,
                question.Meaning,
                ChoiceOf(question)!,
                choices => choices.FirstOrDefault(choice => choice.Question == question.Name))),
        ],
        fields => ReviewQuestions.All.Select(question => fields.Get<ReviewChoice?>(question.Name)).OfType<ReviewChoice>().ToValueList());

    private static readonly RecordShape<ValueList<RuleOff>> Off = new(
        "list of rules",
        [
            .. ReviewRuleNames.All.Select(rule => Key<ValueList<RuleOff>>.Optional(
                rule,
                $"Switches the rule {rule} off; the text says why.",
                new PairShape<RuleOff, string>(TextShape.Instance, (name, reason) => new(name, reason), off => off.Reason)!,
                rules => rules.FirstOrDefault(off => off.Rule == rule))),
        ],
        fields => ReviewRuleNames.All.Select(rule => fields.Get<RuleOff?>(rule)).OfType<RuleOff>().ToValueList());

    public static readonly RecordShape<ReviewSettings> Settings = new(
        "list of review settings",
        [
            Key<ReviewSettings>.Optional("ambient", "Temperature of the air in the enclosure at its hottest.", Shapes.AnyTemperature, settings => settings.Ambient),
            Key<ReviewSettings>.Optional("short-circuit", "Fault current that the mains can drive at the inlet.", Shapes.AnyCurrent, settings => settings.ShortCircuit),
            Key<ReviewSettings>.Optional("headroom", "Share of each supply that stays unused.", Shapes.AnyShare, settings => settings.Headroom),
            Key<ReviewSettings>.Optional("voltage-drop", "Most of the voltage that may be lost on the way to a load.", Shapes.AnyShare, settings => settings.VoltageDrop),
            Key<ReviewSettings>.Optional("choices", "What was chosen where the trade disagrees.", Choices, settings => settings.Choices, []),
            Key<ReviewSettings>.Optional("off", "Rules that are switched off, with the reason.", Off, settings => settings.Off, []),
        ],
        fields => new()
        {
            Ambient = fields.Get<Temperature?>("ambient"),
            ShortCircuit = fields.Get<ElectricCurrent?>("short-circuit"),
            Headroom = fields.Get<Ratio?>("headroom"),
            VoltageDrop = fields.Get<Ratio?>("voltage-drop"),
            Choices = fields.Get<ValueList<ReviewChoice>>("choices"),
            Off = fields.Get<ValueList<RuleOff>>("off"),
        });

    private static RecordShape<ReviewChoice> ChoiceOf(ReviewQuestion question) => new(
        $"choice on {question.Name}",
        [
            Key<ReviewChoice>.Needed(
                "take",
                "What is chosen.",
                new WordShape<string>($"choice on {question.Name}", [.. question.Answers.Select(answer => (answer.Word, answer.Word))]),
                choice => choice.Answer),
            Key<ReviewChoice>.Needed("because", "Why.", TextShape.Instance, choice => choice.Reason),
        ],
        fields => new(question.Name, fields.Text("take"), fields.Text("because")));
}
