using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Ways through the wiring, in words: conductors, plugs, parts and elements in order.</summary>
internal static class PathWords
{
    // A sentence of more names than this is not read; of a longer run of metal the ends are named.
    private const int MostNames = 12;
    private const int NamesAtEachEnd = 2;

    /// <summary>The way in words, such as <c>W3, fuse of X1, W4 and the element of E1 (106 Ω)</c>.</summary>
    public static string Of(ReadingPath path, MachineDesign design)
    {
        var named = new List<(string Name, bool IsMetal)>();
        foreach (var element in path.Elements)
            if (NameOf(element, design) is { } name && (named.Count == 0 || named[^1].Name != name))
                named.Add((name, element.IsMetal));
        return List(named.Count <= MostNames ? [.. named.Select(item => item.Name)] : Shortened(named));
    }

    /// <summary>Names with commas and a final "and".</summary>
    public static string List(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "one terminal",
        1 => names[0],
        _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
    };

    /// <summary>An element of a part, such as <c>body-diode of A1</c>.</summary>
    public static string Plain(NetworkElement element) => $"{element.Name} of {element.Subject}";

    private static string? NameOf(NetworkElement element, MachineDesign design) => element switch
    {
        { Kind: ElementKind.Joint } => null,
        { Kind: ElementKind.Copper } => element.Subject,
        { Kind: ElementKind.Mating } => $"plug {design.FindPart(element.Subject)!.Type.ConnectorOf(element.Name)!.Name} of {element.Subject}",
        { Kind: ElementKind.Jumper } => $"jumper {Plain(element)}",
        { Part: Resistor, IsMetal: true } => element.Subject,
        { Part: Insulation insulation } => $"the insulation {Plain(element)} ({ReadingWords.Of(insulation.AtLeast.Ohms)} or more)",
        { Part: Diode } => $"the junction {Plain(element)}",
        { Part: Unpredictable } => $"the port {Plain(element)} (it differs from design to design)",
        { IsMetal: true } => Plain(element),
        _ => $"the {Plain(element)} ({ReadingWords.Of(element.NominalOhms)})",
    };

    private static List<string> Shortened(List<(string Name, bool IsMetal)> named)
    {
        var kept = new List<string>();
        for (var start = 0; start < named.Count;)
        {
            var end = start;
            while (end < named.Count && named[end].IsMetal)
                end++;
            var run = named[start..end].Select(item => item.Name).ToArray();
            kept.AddRange(run.Length <= 2 * NamesAtEachEnd ? run : [.. run[..NamesAtEachEnd], "…", .. run[^NamesAtEachEnd..]]);
            if (end < named.Count)
                kept.Add(named[end++].Name);
            start = end;
        }

        return kept;
    }
}
