using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The emergency stop takes the energy from everything that moves or heats, by contacts and not by a program.</summary>
internal sealed class EmergencyStop : IReviewRule
{
    private const string Clauses = "IEC 60204-1 clauses 9.2.2 and 9.2.3.4.2; ISO 13850 clause 4.1";

    public string Id => "emergency-stop";

    public string Words => "an emergency stop that takes the energy from what moves and heats";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var dangers = Dangers(context).ToArray();
        var buttons = context.Design.Parts.Where(IsEmergencyStop).ToArray();
        if (dangers.Length == 0)
            return [];
        if (buttons.Length == 0)
            return [None(dangers)];
        var left = new StoppedMachine(context, [.. buttons.Select(button => button.Designation)]);
        var moving = dangers.Where(danger => left.IsPowered(danger.Fed, danger.Returned)).ToArray();
        var drivesMayBrake = context.Settings.Takes(ReviewQuestions.StopCategory, "1");
        return moving
            .Where(danger => !(danger.IsMotor && drivesMayBrake))
            .GroupBy(danger => danger.IsMotor)
            .Select(group => Left(buttons, [.. group.Select(danger => danger.Part).Distinct()], group.Key));
    }

    private static IEnumerable<(string Part, int Fed, int Returned, bool IsMotor)> Dangers(ReviewContext context) =>
    [
        .. from demand in context.Demands.All
           let part = context.Design.FindPart(demand.Part)!
           where part.Type.ClassLetter == "M" || (part.Type.ClassLetter == "E" && IsHeater(part))
           select (demand.Part, demand.Fed, demand.Returned, part.Type.ClassLetter == "M"),
    ];

    // A light is of class E too, and does no harm.
    private static bool IsHeater(Part part) => part.Type.Circuit.OfType<Resistor>().Any() && !part.Type.Circuit.OfType<Consumer>().Any();

    // IEC 60947-5-5 names the device so, and part types call themselves what the trade calls them.
    private static bool IsEmergencyStop(Part part) =>
        part.Type.Name.Contains("emergency stop", StringComparison.OrdinalIgnoreCase) && part.Type.Circuit.OfType<Contact>().Any();

    private Finding None((string Part, int Fed, int Returned, bool IsMotor)[] dangers) => new(
        Id,
        FindingSeverity.Note,
        [.. dangers.Select(danger => danger.Part).Distinct()],
        "The machine moves or heats and has no emergency stop: the plug is the only way to take the energy off.",
        "Fit a latching emergency stop with opening contacts, or keep the plug within reach.",
        Clauses);

    private Finding Left(Part[] buttons, string[] parts, bool areMotors) => new(
        Id,
        FindingSeverity.Warning,
        [.. buttons.Select(button => button.Designation), .. parts],
        $"With {PathWords.List([.. buttons.Select(button => button.Designation)])} pressed, {PathWords.List(parts)} {(parts.Length == 1 ? "stays" : "stay")} under power: only a program or an electronic switch stops {(parts.Length == 1 ? "it" : "them")}.",
        areMotors
            ? "Lead the feed of the drivers through a relay that the emergency stop releases; where axes must brake under power first, choose stop category 1 and say why."
            : "Lead the feed of the heaters through a relay or contactor that the emergency stop releases.",
        Clauses);
}
