namespace Proveout.Engine.Motion;

/// <summary>What a motor output of the controller turns as built.</summary>
/// <param name="Output">The output, by the motor that it is meant for.</param>
/// <param name="Motor">The motor that is plugged in.</param>
/// <param name="Sign">-1 when a coil is reversed, so that it turns the other way.</param>
public sealed record OutputPlug(string Output, string Motor, int Sign);
