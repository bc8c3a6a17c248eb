namespace Proveout.Engine.Machine;

/// <summary>The words that a field of a thing may have, where they are few.</summary>
public static class FieldWords
{
    /// <summary>Colours of insulation, IEC 60757.</summary>
    public static IReadOnlyList<string> Colours => MachineShapes.Colour.Words;

    /// <summary>Kinds of route.</summary>
    public static IReadOnlyList<string> RouteKinds => MachineShapes.RouteWord.Words;

    /// <summary>How copper is made up, IEC 60228.</summary>
    public static IReadOnlyList<string> Strands => MakeShapes.StrandWord.Words;

    /// <summary>How ends are dressed.</summary>
    public static IReadOnlyList<string> Ends => MakeShapes.EndWord.Words;

    /// <summary>Where conductors are held against pull.</summary>
    public static IReadOnlyList<string> Reliefs => MakeShapes.ReliefWord.Words;

    /// <summary>How conductors lie in a route, IEC 60204-1 annex D.</summary>
    public static IReadOnlyList<string> Methods => MakeShapes.MethodWord.Words;
}
