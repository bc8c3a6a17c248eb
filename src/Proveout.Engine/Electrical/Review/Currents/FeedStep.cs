namespace Proveout.Engine.Electrical;

/// <summary>A step that current can take from a node.</summary>
/// <param name="Element">What it goes through.</param>
/// <param name="Other">Where it comes out.</param>
internal readonly record struct FeedStep(NetworkElement Element, int Other);
