using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Conductors that run side by side between the same two parts: cores of one cable, or as good as that.</summary>
internal static class Cables
{
    /// <summary>True when two conductors join the same two parts and are of one size, so that they are taken for each other.</summary>
    public static bool AreCoresOfOne(Conductor one, Conductor two) =>
        PartsOf(one) == PartsOf(two) && one.CrossSection.SquareMillimeters.Equals(two.CrossSection.SquareMillimeters)
        && (one.Colour == ConductorColour.GreenYellow) == (two.Colour == ConductorColour.GreenYellow);

    /// <summary>Every group of two or more such conductors.</summary>
    public static IEnumerable<Conductor[]> Of(MachineDesign design) =>
        design.Conductors
            .Where(conductor => conductor.Colour != ConductorColour.GreenYellow)
            .GroupBy(PartsOf)
            .Select(group => group.ToArray())
            .Where(group => group.Length > 1);

    /// <summary>Every pair of conductors of a group, once.</summary>
    public static IEnumerable<(Conductor One, Conductor Two)> Pairs(Conductor[] cores) =>
        cores.SelectMany((one, index) => cores.Skip(index + 1).Select(two => (one, two)));

    /// <summary>The end of a conductor that lands on a part.</summary>
    public static TerminalReference EndAt(Conductor conductor, string part) => conductor.From.Part == part ? conductor.From : conductor.To;

    private static (string, string) PartsOf(Conductor conductor) =>
        string.CompareOrdinal(conductor.From.Part, conductor.To.Part) < 0
            ? (conductor.From.Part, conductor.To.Part)
            : (conductor.To.Part, conductor.From.Part);
}
