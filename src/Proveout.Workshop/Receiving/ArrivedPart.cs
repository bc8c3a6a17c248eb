namespace Proveout.Workshop;

/// <summary>A part of a machine, and what came of it for one build.</summary>
/// <param name="Designation">Its designation.</param>
/// <param name="TypeName">What it is.</param>
/// <param name="Name">What it is for.</param>
/// <param name="Marks">What is printed on it or can be measured on the table; may be empty.</param>
/// <param name="Came">What came: one of <see cref="Arrivals.Answers"/>, or empty while nobody has said.</param>
/// <param name="Note">In what it differs, or what was done about it; may be empty.</param>
/// <param name="Person">Who says so; empty while nobody has.</param>
public sealed record ArrivedPart(string Designation, string TypeName, string Name, string Marks, string Came, string Note, string Person);
