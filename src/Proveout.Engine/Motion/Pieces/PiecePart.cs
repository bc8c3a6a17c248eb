namespace Proveout.Engine.Motion;

/// <summary>One part of a test piece, a body of its own.</summary>
/// <param name="Name">Short name.</param>
/// <param name="View">From where its shape is seen.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Shape">Its shape in its own plane: from above for what lies, from the front or the right for what stands.</param>
/// <param name="Mesh">Its skin, where it stands on the plate.</param>
/// <param name="Measures">What is measured at it.</param>
public sealed record PiecePart(string Name, string View, string Purpose, FlatShape Shape, SolidMesh Mesh, IReadOnlyList<PieceMeasure> Measures);
