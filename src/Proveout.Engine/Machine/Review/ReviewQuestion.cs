namespace Proveout.Engine.Machine;

/// <summary>Something on which the trade disagrees.</summary>
/// <param name="Name">Its name in the machine file.</param>
/// <param name="Meaning">What is asked.</param>
/// <param name="Answers">The answers, with the reason that speaks for each; the first is taken when nothing is chosen.</param>
public sealed record ReviewQuestion(string Name, string Meaning, ValueList<ReviewAnswer> Answers);

/// <summary>An answer to a question of the trade.</summary>
/// <param name="Word">The answer as written.</param>
/// <param name="For">What speaks for it.</param>
public sealed record ReviewAnswer(string Word, string For);
