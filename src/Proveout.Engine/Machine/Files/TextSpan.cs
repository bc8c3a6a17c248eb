namespace Proveout.Engine.Machine;

/// <summary>A stretch of a text.</summary>
/// <param name="Start">Its first character, counted from 0.</param>
/// <param name="End">The character after its last.</param>
internal readonly record struct TextSpan(int Start, int End);
