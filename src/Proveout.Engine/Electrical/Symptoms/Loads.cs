using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Finds the loads of a machine: what works in some state of the sound machine.</summary>
internal static class Loads
{
    private const double LeastWatts = 1;
    private const double LeastAmperes = 0.1;

    // What a sensor or a port takes is seen by nobody.
    private const double LeastConsumerAmperes = 0.01;
    private const double LampAmperes = 0.001;

    /// <summary>The loads, part by part.</summary>
    /// <param name="model">The machine.</param>
    /// <param name="sound">Solutions of the sound machine in the states in which things work.</param>
    public static IReadOnlyList<ILoad> Of(LiveModel model, IReadOnlyList<LiveView> sound) =>
        [.. model.Context.Design.Parts.SelectMany(part => OfPart(model.Circuit, sound, part))];

    private static IEnumerable<ILoad> OfPart(LiveCircuit circuit, IReadOnlyList<LiveView> sound, Part part)
    {
        LiveBranch[] own = [.. circuit.Branches.Where(branch => branch.Subject == part.Designation)];
        LiveBranch[] consumers = [.. own.Where(branch => branch.Element is Consumer consumer && IsSeen(part, consumer))];
        foreach (var branch in consumers)
            yield return new ConsumerLoad(part, branch, consumers.Length > 1 ? branch.Name : "", sound.Max(view => ConsumerLoad.Volts(branch, view)));
        LiveDrive[] drives = [.. circuit.Drives.Where(drive => circuit.Controls[drive.Control].Part == part.Designation)];
        if (drives.Length > 0)
        {
            yield return new CoilLoad(part, drives[0]);
            yield break;
        }

        LiveBranch[] windings = [.. own.Where(branch => IsWinding(part, branch))];
        if (windings.Length > 1)
        {
            if (sound.FirstOrDefault(view => windings.All(winding => Math.Abs(view.Solution.DcAmperes(winding.Index)) > LeastAmperes)) is { } on)
                yield return new MotorLoad(part, [.. windings.Select(winding => (winding, on.Solution.DcAmperes(winding.Index)))]);
            yield break;
        }

        (LiveBranch Branch, double Watts)[] heated =
        [
            .. own
                .Where(branch => branch.Element is Resistor && part.Type.ClassLetter is "E" or "M" or "Q")
                .Select(branch => (branch, sound.Max(view => HeatedLoad.Watts(branch, view))))
                .Where(item => item.Item2 > LeastWatts),
        ];
        foreach (var (branch, watts) in heated)
            yield return new HeatedLoad(part, branch, heated.Length > 1 ? branch.Name : "", watts);
    }

    private static bool IsSeen(Part part, Consumer consumer) => part.Type.ClassLetter switch
    {
        "B" => false,
        "P" or "E" => consumer.Current.Amperes >= LampAmperes,
        _ => consumer.Current.Amperes >= LeastConsumerAmperes,
    };

    private static bool IsWinding(Part part, LiveBranch branch) =>
        branch.Element is Resistor winding
        && part.Type.FindTerminal(winding.A)?.Role == TerminalRole.Winding
        && part.Type.FindTerminal(winding.B)?.Role == TerminalRole.Winding;
}
