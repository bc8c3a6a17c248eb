using Proveout.Engine.Machine;

namespace Proveout.Web.Hosting;

/// <summary>A form that was not taken: why, and what was typed in it, so that nothing is typed twice.</summary>
/// <param name="Form">The form's name.</param>
/// <param name="Sentences">What is wrong and what to do.</param>
/// <param name="Typed">Fields and their texts.</param>
public sealed record Refusal(string Form, IReadOnlyList<string> Sentences, IReadOnlyDictionary<string, string> Typed)
{
    public static string Sentence(Diagnostic diagnostic) => $"{diagnostic.Message} {diagnostic.Mend}".Trim();
}
