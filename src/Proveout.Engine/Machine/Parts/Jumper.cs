namespace Proveout.Engine.Machine;

/// <summary>A bridge that selects: it joins a common post to one of several others.</summary>
/// <param name="Name">Name as marked; unique on the part.</param>
/// <param name="Common">Node (terminal or inner node) of the common post.</param>
/// <param name="Positions">Node of the post that each position joins to the common one, by position name, in the order of the posts.</param>
public sealed record Jumper(string Name, string Common, ValueList<JumperPosition> Positions);
