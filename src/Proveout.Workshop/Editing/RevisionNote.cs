namespace Proveout.Workshop;

/// <summary>What a revision says of itself.</summary>
/// <param name="Kind">How it came about.</param>
/// <param name="Of">Number of the revision that it takes back or makes again; 0 when neither.</param>
/// <param name="Person">Who saves.</param>
/// <param name="What">What is changed, in a few words.</param>
internal sealed record RevisionNote(RevisionKind Kind, int Of, string Person, string What);
