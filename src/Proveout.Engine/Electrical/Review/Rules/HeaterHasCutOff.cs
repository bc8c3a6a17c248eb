using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A mains heater has a thermal cut-off or thermostat in its line, whatever the control does.</summary>
internal sealed class HeaterHasCutOff : IReviewRule
{
    // Part types say what they are in their names; a fuse element alone may be for current.
    private static readonly string[] ThermalWords = ["thermal cut-off", "thermostat", "temperature limiter"];

    public string Id => "heater-has-cut-off";

    public string Words => "a thermal cut-off in the line of every mains heater";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var thermal = context.Design.Parts.Where(IsThermal).Select(part => part.Designation).ToHashSet(StringComparer.Ordinal);
        foreach (var mains in context.Supplies.Where(reach => reach.Supply.IsMains))
        {
            var withoutCutOff = context.JoinedTo(mains.Supply.Plus, element => thermal.Contains(element.Subject) || element.Part is Fuse { Curve: FuseCurve.Thermal });
            foreach (var load in context.Loads.Where(load => load.Reach == mains && context.PartOf(load.Element).Type.ClassLetter == "E" && withoutCutOff.Contains(load.Fed)))
                yield return new Finding(
                    Id,
                    FindingSeverity.Error,
                    [load.Element.Subject],
                    $"Mains reaches heater {load.Element.Subject} ({ReviewContext.Number(load.Reach.Supply.Volts * load.NominalAmperes, 0)} W) without passing a thermal cut-off: a switch that fails closed heats without end.",
                    "Put a thermal cut-off into the line, clamped to what the heater heats.",
                    "IEC 60335-1 clause 19 asks for protection when a control fails; common practice");
        }
    }

    private static bool IsThermal(Part part) =>
        ThermalWords.Any(word => part.Type.Name.Contains(word, StringComparison.OrdinalIgnoreCase)) && part.Type.Circuit.OfType<Fuse>().Any();
}
