namespace Proveout.Engine.Electrical;

/// <summary>A jumper on whose bank loads hang is fitted.</summary>
internal sealed class JumperFitted : IReviewRule
{
    public string Id => "jumper-fitted";

    public string Words => "jumper fitted where loads hang on its bank";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from part in context.Design.Parts
        from jumper in part.Type.Jumpers
        where part.Jumpers.All(setting => setting.Jumper != jumper.Name)
        where JumperLoads.SelectsSupply(context, part, jumper)
        let loads = JumperLoads.Of(context, part, jumper).Select(load => load.Part.Designation).Distinct().ToArray()
        where loads.Length > 0
        select new Finding(
            Id,
            FindingSeverity.Error,
            [part.Designation, jumper.Name, .. loads],
            $"Jumper {jumper.Name} of {part.Designation} is not fitted, and {PathWords.List(loads)} {(loads.Length == 1 ? "hangs" : "hang")} on its bank without voltage.",
            $"Fit it at one of {PathWords.List([.. jumper.Positions.Select(position => position.Name)])}, as the loads ask.",
            "common practice");
}
