namespace Proveout.Engine.Machine;

/// <summary>What the builder chose where the trade disagrees.</summary>
/// <param name="Question">One of <see cref="ReviewQuestions"/>.</param>
/// <param name="Answer">One of its answers.</param>
/// <param name="Reason">Why.</param>
public sealed record ReviewChoice(string Question, string Answer, string Reason);
