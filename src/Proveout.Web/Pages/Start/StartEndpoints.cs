using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Start;

/// <summary>The guided start: a few questions become a machine of one's own, and then what was guessed is confirmed or corrected.</summary>
internal static class StartEndpoints
{
    public const string Form = "describe";

    public const string ConfirmForm = "confirm";

    // More than the start ever guesses; a longer form is nobody's.
    private const int MostGuesses = 500;

    public static void Map(IEndpointRouteBuilder routes, StartDesk desk)
    {
        routes.MapGet(Addresses.Describe, (HttpContext context) => PageResult.Of<StartPage>(new StartPageView(PersonCookie.Read(context, ""), null)));
        routes.MapPost(Addresses.Describe, (HttpContext context, CancellationToken cancellation) => MakeAsync(context, desk, cancellation));
        routes.MapGet("/machines/{machineId}/guesses", (string machineId, HttpContext context) => desk.Guesses(machineId) is { } guesses
            ? PageResult.Of<GuessesPage>(new GuessesPageView(guesses, PersonCookie.Read(context, ""), null))
            : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapPost("/machines/{machineId}/guesses", (string machineId, HttpContext context) => ConfirmAsync(machineId, context, desk));
    }

    /// <summary>Name of the field that carries a guess, by its place in the list.</summary>
    public static string FieldOf(int index) => FormattableString.Invariant($"so-{index}");

    /// <summary>A guess as the form carries it.</summary>
    public static string TextOf(Guess guess) => FormattableString.Invariant($"{guess.Line}|{guess.File}|{guess.Words}");

    private static async Task<IResult> MakeAsync(HttpContext context, StartDesk desk, CancellationToken cancellation)
    {
        var form = await PostedForm.ReadAsync(context);
        var problems = form.Problems;
        var address = "";
        if (problems.Count == 0)
        {
            var typed = StartQuestions.Names.ToDictionary(name => name, form.Text, StringComparer.Ordinal);
            var made = await desk.MakeAsync(typed, form.Person(""), cancellation);
            (problems, address) = ([.. made.Diagnostics.Select(Sentence)], made.Value is { } machine ? Addresses.Guesses(machine.Id) : "");
        }

        return FormAnswer.Of<StartPage>(context, form, problems, refusal => new StartPageView(form.Person(""), refusal), "", address);
    }

    private static async Task<IResult> ConfirmAsync(string machineId, HttpContext context, StartDesk desk)
    {
        if (desk.Guesses(machineId) is not { } guesses)
            return TroubleEndpoints.Missing("There is no such machine.");
        var form = await PostedForm.ReadAsync(context);
        var answer = form.Problems.Count > 0 ? null : desk.Confirm(machineId, [.. Enumerable.Range(0, MostGuesses).Select(index => GuessOf(form.Text(FieldOf(index)))).OfType<Guess>()], form.Person(""));
        IReadOnlyList<string> problems = answer is null ? form.Problems
            : answer.Conflicts.Count > 0 ? ["Somebody else changed the same lines meanwhile. Look at the list again, and tick what is so there."]
            : [.. answer.Problems.Select(Refusal.Sentence)];
        return FormAnswer.Of<GuessesPage>(
            context, form, problems, refusal => new GuessesPageView(desk.Guesses(machineId) ?? guesses, form.Person(""), refusal), "", $"{Addresses.Guesses(guesses.Machine.Id)}#guesses");
    }

    private static Guess? GuessOf(string text) =>
        text.Split('|', 3) is [var line, var file, var words] && int.TryParse(line, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? new(file, number, words, "")
            : null;

    // An overload names things of a machine that is not there yet; every other refusal stands beside its question.
    private static string Sentence(Diagnostic problem) =>
        problem.Rule is "answers-contradict" or "no-such-answer" or "not-a-figure" or "out-of-range" or "not-whole" ? $"{problem.Place.File}: {Refusal.Sentence(problem)}" : Refusal.Sentence(problem);
}
