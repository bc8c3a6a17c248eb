using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>In mains circuits blue marks the neutral, always and nothing else.</summary>
internal sealed class NeutralColour : IReviewRule
{
    private const string Source = "IEC 60445 clause 6.2.2; IEC 60204-1 clause 13.2.3";

    public string Id => "neutral-colour";

    public string Words => "blue for the neutral in mains circuits, always and only";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var conductor in context.Design.Conductors.Where(context.IsMains))
        {
            var isNeutral = context.Context.ClassOf(conductor) == NetClass.Neutral;
            if (isNeutral == (conductor.Colour == ConductorColour.Blue))
                continue;
            yield return new Finding(
                Id,
                FindingSeverity.Error,
                [conductor.Id],
                $"{conductor.Id} from {conductor.From} to {conductor.To} carries {(isNeutral ? "neutral" : "line")} and is {ColourWords.Of(conductor.Colour)}.",
                isNeutral ? "Take a blue conductor for the neutral." : "Take black or brown for the line; blue is the neutral's.",
                Source);
        }
    }
}
