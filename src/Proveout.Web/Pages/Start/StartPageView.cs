using Proveout.Web.Hosting;

namespace Proveout.Web.Pages.Start;

/// <summary>What the guided start shows.</summary>
/// <param name="Person">Who was here last.</param>
/// <param name="Refusal">Why no machine was made; null when none was asked for.</param>
public sealed record StartPageView(string Person, Refusal? Refusal);
