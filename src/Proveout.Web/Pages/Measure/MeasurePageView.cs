using Microsoft.AspNetCore.Http;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Measure;

/// <summary>What a page of measurements shows.</summary>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="Builds">Builds in whose record it can be kept.</param>
/// <param name="Person">Who is likely to measure.</param>
/// <param name="Sheet">What followed; null when nothing was asked yet or it was refused.</param>
/// <param name="Kept">Where it was kept; null when it was not.</param>
/// <param name="Refusal">Why it was refused.</param>
public sealed record MeasurePageView(
    IReadOnlyDictionary<string, string> Typed, IReadOnlyList<BuildSummary> Builds, string Person, SheetView? Sheet, BuildSummary? Kept, Refusal? Refusal)
{
    /// <summary>What the page answers with (RFC 9110): fine, or not to be worked with as it is.</summary>
    public int Status => Refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity;

    /// <summary>What was typed into a field; empty when nothing was.</summary>
    public string Text(string field) => Typed.GetValueOrDefault(field, "");
}
