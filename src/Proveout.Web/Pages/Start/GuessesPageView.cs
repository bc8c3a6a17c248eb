using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Start;

/// <summary>What the page of a machine's guesses shows.</summary>
/// <param name="Guesses">The machine and its guesses.</param>
/// <param name="Person">Who was here last.</param>
/// <param name="Refusal">Why nothing was confirmed; null when nothing was refused.</param>
public sealed record GuessesPageView(GuessesView Guesses, string Person, Refusal? Refusal);
