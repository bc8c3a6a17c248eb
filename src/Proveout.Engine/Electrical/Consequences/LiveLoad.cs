using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Something that takes power in some state of the sound machine.</summary>
/// <param name="Part">Its part.</param>
/// <param name="Branch">Its branch in the live circuit.</param>
/// <param name="MostWatts">The most it takes in any state of the sound machine.</param>
/// <param name="IsHeater">True when it turns that power into heat on purpose.</param>
/// <param name="IsWinding">True when the direction of its current counts: a motor's winding.</param>
/// <param name="WorksFromVolts">Voltage below which it does not work; 0 when not said.</param>
internal sealed record LiveLoad(Part Part, LiveBranch Branch, double MostWatts, bool IsHeater, bool IsWinding, double WorksFromVolts)
{
    // Less than this is a signal, not a load.
    private const double LeastWatts = 0.01;
    private const int BoardTerminals = 8;

    public static IEnumerable<LiveLoad> Of(LiveModel model)
    {
        foreach (var branch in model.Circuit.Branches)
        {
            if (branch.Element is not (Resistor or Consumer) || model.Context.Design.FindPart(branch.Subject) is not { } part)
                continue;
            if (branch.Element is Resistor resistor && (part.Type.Terminals.Count > BoardTerminals || resistor.Value.High is not { Ohms: >= NetworkElement.MetalOhms }))
                continue;
            var most = model.States.Max(state => Watts(model.Sound(state), branch));
            if (most >= LeastWatts)
                yield return new(
                    part,
                    branch,
                    most,
                    part.Type.ClassLetter == "E" && branch.Element is Resistor,
                    part.Type.ClassLetter == "M",
                    (branch.Element as Consumer)?.WorksFrom?.Volts ?? 0);
        }
    }

    /// <summary>Power that it takes.</summary>
    public double Watts(LiveSolution solution) => Watts(solution, Branch);

    /// <summary>Voltage across it, direct and alternating taken together.</summary>
    public double Volts(LiveSolution solution)
    {
        var direct = solution.DcVolts(Branch.A) - solution.DcVolts(Branch.B);
        var alternating = (solution.AcVolts(Branch.A) - solution.AcVolts(Branch.B)).Magnitude;
        return Math.Sqrt((direct * direct) + (alternating * alternating));
    }

    private static double Watts(LiveSolution solution, LiveBranch branch)
    {
        var siemens = solution.Changed.Siemens[branch.Index];
        var direct = solution.DcVolts(branch.A) - solution.DcVolts(branch.B);
        var alternating = solution.AcVolts(branch.A) - solution.AcVolts(branch.B);
        return ((direct * direct) + (alternating.Real * alternating.Real) + (alternating.Imaginary * alternating.Imaginary)) * siemens;
    }
}
