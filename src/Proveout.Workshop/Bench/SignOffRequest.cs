namespace Proveout.Workshop;

/// <summary>A signature under the record.</summary>
/// <param name="Person">Who.</param>
/// <param name="Role">In which role, such as builder or checker.</param>
/// <param name="Statement">What is stated.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record SignOffRequest(string Person, string Role, string Statement, Guid Key);
