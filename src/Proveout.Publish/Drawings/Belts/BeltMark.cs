namespace Proveout.Publish.Drawings;

/// <summary>Something that a belt runs over or is clamped at.</summary>
/// <param name="Name">Its name.</param>
/// <param name="X">To the right.</param>
/// <param name="Y">Upward.</param>
/// <param name="Radius">Its radius; 0 for an anchor.</param>
/// <param name="IsToothed">True when it has teeth.</param>
/// <param name="Motor">The motor that turns it; empty when none does.</param>
public sealed record BeltMark(string Name, double X, double Y, double Radius, bool IsToothed, string Motor);
