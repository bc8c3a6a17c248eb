using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Ways through the wiring, in words: conductors, plugs, parts and elements in order.</summary>
internal static class PathWords
{
    /// <summary>The way in words, such as <c>W3, fuse of X1, W4 and the element of E1 (106 Ω)</c>.</summary>
    public static string Of(ReadingPath path, MachineDesign design)
    {
        var names = path.Elements.Select(element => NameOf(element, design)).OfType<string>();
        return List(WithoutRepeats(names));
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
        { Part: Insulation } => $"the insulation {Plain(element)} ({ReadingWords.Of(element.LowOhms)} or more)",
        { Part: Diode } => $"the junction {Plain(element)}",
        { Part: Unpredictable } => $"the port {Plain(element)} (it differs from design to design)",
        { IsMetal: true } => Plain(element),
        _ => $"the {Plain(element)} ({ReadingWords.Of(element.NominalOhms)})",
    };

    // A terminal strip is several elements in a row; its designation says it once.
    private static List<string> WithoutRepeats(IEnumerable<string> names)
    {
        var kept = new List<string>();
        foreach (var name in names)
            if (kept.Count == 0 || kept[^1] != name)
                kept.Add(name);
        return kept;
    }
}
