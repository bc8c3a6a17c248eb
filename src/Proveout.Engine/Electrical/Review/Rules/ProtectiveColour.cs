using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Green-yellow marks the protective conductor, always and nothing else.</summary>
internal sealed class ProtectiveColour : IReviewRule
{
    private const string Source = "IEC 60445 clause 6.3; IEC 60204-1 clause 13.2.2";

    public string Id => "protective-colour";

    public string Words => "green-yellow for protective conductors, always and only";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var conductor in context.Design.Conductors)
        {
            var isGreenYellow = conductor.Colour == ConductorColour.GreenYellow;
            var (from, to) = (IsProtective(context, conductor.From), IsProtective(context, conductor.To));
            if (isGreenYellow && !from && !to && !IsInProtectiveNet(context, conductor))
                yield return new Finding(
                    Id,
                    FindingSeverity.Error,
                    [conductor.Id],
                    $"{conductor.Id} from {conductor.From} to {conductor.To} is green-yellow and is no protective conductor.",
                    "Take another colour; green-yellow is for the protective conductor only.",
                    Source);
            else if (!isGreenYellow && from && to)
                yield return new Finding(
                    Id,
                    FindingSeverity.Error,
                    [conductor.Id],
                    $"{conductor.Id} from {conductor.From} to {conductor.To} is a protective conductor and is {ColourWords.Of(conductor.Colour)}.",
                    "Take a green-yellow conductor over its whole length.",
                    Source);
        }
    }

    private static bool IsProtective(ReviewContext context, TerminalReference end) =>
        context.Design.FindTerminal(end)!.Role == TerminalRole.ProtectiveEarth;

    private static bool IsInProtectiveNet(ReviewContext context, Conductor conductor) =>
        context.Context.ClassOf(conductor.From) == NetClass.ProtectiveEarth || context.Context.ClassOf(conductor.To) == NetClass.ProtectiveEarth;
}
