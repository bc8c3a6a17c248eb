using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A jumper gives the loads of its bank the voltage that they are made for.</summary>
internal sealed class JumperVoltage : IReviewRule
{
    // Ratings are the highest voltage that a part bears, some 10 to 15 % above its nominal one; fans start at half of that. Common practice.
    private const double LeastFraction = 0.6;

    public string Id => "jumper-voltage";

    public string Words => "jumper position against the rated voltage of the loads on its bank";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        from setting in part.Jumpers
        let jumper = part.Type.Jumpers.First(candidate => candidate.Name == setting.Jumper)
        let post = jumper.Positions.First(position => position.Name == setting.Position).Post
        from supply in context.SuppliesAtPost(part.Designation, post)
        from load in JumperLoads.Of(context, part, jumper)
        let rated = load.Terminal.Voltage!.Value.Volts
        where supply.Volts > rated || (supply.Volts < LeastFraction * rated && IsOneVoltage(load.Part))
        select Found(part, setting, supply, load.Part, rated);

    // Heaters, lights, fans, motors and lamps have one nominal voltage; relays, drivers and boards often take a wide range.
    private static bool IsOneVoltage(Part part) => part.Type.ClassLetter is "E" or "G" or "M" or "P";

    private Finding Found(Part part, JumperSetting setting, Supply supply, Part load, double rated) => new(
        Id,
        FindingSeverity.Error,
        [part.Designation, setting.Jumper, load.Designation],
        $"Jumper {setting.Jumper} of {part.Designation} at {setting.Position} puts {ReviewContext.Number(supply.Volts)} V on {load.Designation} ({load.Name}), which bears {ReviewContext.Number(rated)} V: it {(supply.Volts > rated ? "is destroyed" : "does not run")}.",
        "Set the jumper to the voltage of the loads, or take loads for its voltage; all loads of a bank share one voltage.",
        "common practice; ratings from the part types");
}
