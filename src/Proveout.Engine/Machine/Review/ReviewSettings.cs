using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What a machine file says to the review of its design.</summary>
public sealed record ReviewSettings
{
    /// <summary>Nothing said.</summary>
    public static readonly ReviewSettings Default = new();

    /// <summary>Temperature of the air in the enclosure at its hottest; null for the 40 °C of IEC 60204-1.</summary>
    public Temperature? Ambient { get; init; }

    /// <summary>Fault current that the mains can drive at the inlet; null when not known.</summary>
    public ElectricCurrent? ShortCircuit { get; init; }

    /// <summary>Share of each supply that stays unused while the machine works; null for one fifth, common practice.</summary>
    public Ratio? Headroom { get; init; }

    /// <summary>Most of the voltage that may be lost on the way to a load; null for 5 %, IEC 60204-1 clause 12.5.</summary>
    public Ratio? VoltageDrop { get; init; }

    /// <summary>What was chosen where the trade disagrees.</summary>
    public ValueList<ReviewChoice> Choices { get; init; } = [];

    /// <summary>Rules that are switched off.</summary>
    public ValueList<RuleOff> Off { get; init; } = [];

    /// <summary>The answer to a question: what was chosen, or else the first.</summary>
    public string AnswerTo(string question) =>
        Choices.FirstOrDefault(choice => choice.Question == question)?.Answer ?? ReviewQuestions.Of(question).Answers[0].Word;

    /// <summary>True when what was chosen for a question is an answer.</summary>
    public bool Takes(string question, string answer) => AnswerTo(question) == answer;
}
