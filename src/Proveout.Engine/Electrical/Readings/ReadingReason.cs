using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Says in words why a meter shows what it shows: the way that its current takes.</summary>
public sealed class ReadingReason
{
    // A second way changes the first one's reading by a tenth or more while it has less than ten times the resistance.
    private const double WorthMentioning = 10;

    // A meter's milliampere drops a tenth of a volt here; below that no junction conducts.
    private const double JunctionOhms = 100;

    private readonly WiringNetwork _wiring;
    private readonly PathSearch _search;
    private readonly ReadingCautions _cautions;

    /// <summary>Prepares the reasons for one state of a machine. Safe for use from several threads.</summary>
    /// <param name="wiring">The machine's wiring.</param>
    /// <param name="state">Which plugs are apart and where the controls stand.</param>
    public ReadingReason(WiringNetwork wiring, MachineState state)
    {
        _wiring = wiring;
        _search = new PathSearch(wiring, Conducts);
        _cautions = new ReadingCautions(wiring, new MetalNets(wiring, Conducts));

        bool Conducts(NetworkElement element) => StateNetwork.Conducts(wiring, state, element);
    }

    /// <summary>Why a meter shows what it shows between two places.</summary>
    /// <param name="red">Where the red lead is.</param>
    /// <param name="black">Where the black lead is.</param>
    /// <exception cref="KeyNotFoundException">The machine has no such terminal.</exception>
    public string Between(CheckPoint red, CheckPoint black) => Between(ProbeNodes.Of(_wiring, red), ProbeNodes.Of(_wiring, black));

    /// <summary>Why a meter shows what it shows between two nodes of the wiring.</summary>
    /// <param name="red">Number of the red lead's node.</param>
    /// <param name="black">Number of the black lead's node.</param>
    public string Between(int red, int black)
    {
        if (red == black)
            return "Both leads touch the same terminal.";
        if (_search.Shortest(red, black, _ => false) is not { } path)
            return "Nothing joins the two: the meter shows OL.";
        return path switch
        {
            { PassesInsulation: true } => $"Only insulation lies between: {Words(path)}.{_cautions.For(path)}",
            { PassesJunction: true } => OverJunctions(path),
            _ => OverResistance(path, red, black),
        };
    }

    private string OverJunctions(ReadingPath path)
    {
        var blocking = path.Blocking.Select(PathWords.Plain).Distinct().ToArray();
        var sentence = $"Only junctions lie between: {Words(path)}";
        return blocking.Length > 0
            ? $"{sentence}; with the red lead here {PathWords.List(blocking)} {(blocking.Length == 1 ? "blocks" : "block")}.{_cautions.For(path)}"
            : $"{sentence}, and they conduct with the red lead here.{_cautions.For(path)}";
    }

    private string OverResistance(ReadingPath path, int red, int black)
    {
        var beside = Beside(path, red, black);
        var way = path.IsMetal ? $"Metal all the way, through {Words(path)}" : $"Through {Words(path)}";
        var other = beside is null ? "" : $", and beside it through {Words(beside)}";
        return $"{way}{other}.{(beside is null ? _cautions.For(path) : _cautions.For(path, beside))}";
    }

    // Of a way that is more than metal only what is not metal counts: two loads may well hang on one conductor.
    private ReadingPath? Beside(ReadingPath path, int red, int black)
    {
        var used = path.Elements.Where(element => path.IsMetal || !element.IsMetal).ToHashSet();
        var second = _search.Shortest(red, black, used.Contains);
        return second is { PassesInsulation: false } && !second.Blocking.Any() && IsFelt(second, path) ? second : null;
    }

    private static bool IsFelt(ReadingPath second, ReadingPath first) =>
        second.PassesJunction ? first.NominalOhms >= JunctionOhms : second.NominalOhms < WorthMentioning * first.NominalOhms;

    private string Words(ReadingPath path) => PathWords.Of(path, _wiring.Design);
}
