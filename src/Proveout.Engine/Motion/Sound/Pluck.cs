namespace Proveout.Engine.Motion;

/// <summary>One stroke.</summary>
/// <param name="Ring">Its free vibration.</param>
/// <param name="Room">What was heard before it; empty when nothing was, or when another stroke rang on.</param>
/// <param name="Energy">How loud it begins: mean square.</param>
internal readonly record struct Pluck(Stretch Ring, Stretch Room, double Energy);
