namespace Proveout.Engine.Machine;

/// <summary>One position of a jumper.</summary>
/// <param name="Name">Name as marked, such as <c>24 V</c>.</param>
/// <param name="Post">Node (terminal or inner node) that the jumper then joins to the common post.</param>
public sealed record JumperPosition(string Name, string Post);
