namespace Proveout.Engine.Electrical;

/// <summary>Something that works when an output is commanded, and not before.</summary>
/// <param name="Part">Its designation.</param>
/// <param name="Name">What it is, in words.</param>
/// <param name="AtWork">What it then does, such as <c>gets warm</c>.</param>
public sealed record DrivenLoad(string Part, string Name, string AtWork);
