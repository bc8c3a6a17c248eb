namespace Proveout.Engine.Motion;

/// <summary>Samples from one to before another.</summary>
/// <param name="Start">First sample.</param>
/// <param name="End">The one after the last.</param>
internal readonly record struct Stretch(int Start, int End)
{
    /// <summary>How many samples.</summary>
    public int Length => End - Start;
}
