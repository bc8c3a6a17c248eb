using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Makes a test piece of what was typed.</summary>
internal static class PieceShaping
{
    /// <summary>The piece; null when something is wrong, which is then among the problems.</summary>
    public static TestPiece? Of(IReadOnlyDictionary<string, string> texts, List<Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        var making = PieceWays.Find(texts.GetValueOrDefault(PieceWays.Name, ""), problems);
        SpaceVector travel = new(typed.Require(PieceFields.TravelX), typed.Require(PieceFields.TravelY), typed.Require(PieceFields.TravelZ));
        var reach = typed.Require(PieceFields.Reach);
        var (thickness, line, layer) = (typed.Require(PieceFields.Thickness), typed.Require(PieceFields.Line), typed.Require(PieceFields.Layer));
        var ring = typed.Read(PieceFields.Ring);
        problems.AddRange(typed.Problems);
        if (problems.Count > 0 || making is null)
            return null;
        var (size, problem) = ring is { } made
            ? (TestPieceSize.OfRing(making.Value, made, thickness, line, layer), null)
            : TestPieceSize.Largest(making.Value, travel, reach, thickness, line, layer);
        if (size is not null && size.UprightMm >= 5 * layer)
            return TestPiece.Of(size);
        problems.Add(new("no-piece", new SourcePlace("the piece", 0, 0), problem ?? "The layers are too high for a piece of this size.", problem is null ? "Give the height of a layer in mm." : "See that travel and reach are in mm, and leave axes out of the judgement that cannot make the piece."));
        return null;
    }
}
