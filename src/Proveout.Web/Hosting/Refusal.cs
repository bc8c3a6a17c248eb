using Microsoft.AspNetCore.Http;
using Proveout.Engine.Machine;

namespace Proveout.Web.Hosting;

/// <summary>A form that was not taken: why, and what was typed in it, so that nothing is typed twice.</summary>
/// <param name="Form">The form's name.</param>
/// <param name="Sentences">What is wrong and what to do.</param>
/// <param name="Typed">Fields and their texts.</param>
public sealed record Refusal(string Form, IReadOnlyList<string> Sentences, IReadOnlyDictionary<string, string> Typed)
{
    /// <summary>429 when the refusal is for too many tries (RFC 6585, 4), else 422.</summary>
    public static int StatusOf(IReadOnlyList<Diagnostic> diagnostics) =>
        diagnostics.Any(diagnostic => diagnostic.Rule == "too-many-tries") ? StatusCodes.Status429TooManyRequests : StatusCodes.Status422UnprocessableEntity;

    public static string Sentence(Diagnostic diagnostic) => $"{diagnostic.Message} {diagnostic.Mend}".Trim();
}
