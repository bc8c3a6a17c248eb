namespace Proveout.Engine.Electrical;

/// <summary>What a stop takes the power from.</summary>
/// <param name="Part">The stop.</param>
/// <param name="Position">How it is operated, such as <c>pressed</c>.</param>
/// <param name="Stops">Designations of what then rests though every output is commanded.</param>
/// <param name="StaysOff">Which of these still rest when it is released; empty for a machine without a start button, where all come back at once.</param>
public sealed record StopAction(string Part, string Position, IReadOnlyList<string> Stops, IReadOnlyList<string> StaysOff);
