namespace Proveout.Engine.Machine;

/// <summary>Something wrong with what a person wrote: where it is, what it says, and how to mend it.</summary>
/// <param name="Rule">Identifier of our own, lower case with hyphens, such as <c>unknown-key</c>.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Message">One sentence: what is wrong, with the offending text in it.</param>
/// <param name="Mend">One sentence: what to do, with the nearest valid spelling where there is one.</param>
public sealed record Diagnostic(string Rule, SourcePlace Place, string Message, string Mend)
{
    // Whole files have been pasted into one field: what is quoted of them is cut, and how the sentence begins and ends is kept.
    private const int MostCharacters = 2000, KeptAtEnd = 600;

    /// <summary>One sentence: what is wrong, with the offending text in it; cut in the middle when that is very long.</summary>
    public string Message { get; init; } = Message.Length <= MostCharacters ? Message : $"{Message[..(MostCharacters - KeptAtEnd)]} … {Message[^KeptAtEnd..]}";

    /// <inheritdoc/>
    public override string ToString() => $"{Place}: {Message} {Mend}";
}
