using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Record;

/// <summary>The record of a build: readings, deviations, signatures.</summary>
internal static class RecordEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, bool hasReport)
    {
        routes.MapGet("/builds/{buildId}/record", (string buildId, HttpContext context, IBench bench) => ShowAsync(buildId, context, bench, hasReport));
        routes.MapPost("/builds/{buildId}/record/sign-off", (string buildId, HttpContext context, IBench bench) => SignAsync(buildId, context, bench, hasReport)).Needs(Permission.Sign);
        routes.MapGet("/builds/{buildId}/record/sign-off", (string buildId) => new SeeOther(Addresses.Record(buildId)));
        routes.MapPost("/builds/{buildId}/record", (string buildId, HttpContext context, IBench bench) => EnterAsync(buildId, context, bench, hasReport));
    }

    private static async Task<IResult> ShowAsync(string buildId, HttpContext context, IBench bench, bool hasReport) =>
        await ViewAsync(buildId, context, bench, hasReport) is { } view
            ? PageResult.Of<RecordPage>(view)
            : TroubleEndpoints.Missing("There is no such build.");

    private static async Task<IResult> EnterAsync(string buildId, HttpContext context, IBench bench, bool hasReport)
    {
        if (await ViewAsync(buildId, context, bench, hasReport) is not { } view)
            return TroubleEndpoints.Missing("There is no such build.");
        var form = await PostedForm.ReadAsync(context);
        var problems = form.Problems.Count > 0 ? form.Problems : await HandOverAsync(buildId, form, view, bench, context.RequestAborted);
        return FormAnswer.Of<RecordPage>(context, form, problems, refusal => view with { Refusal = refusal }, view.Person, $"{view.Address}#notes");
    }

    private static async Task<IResult> SignAsync(string buildId, HttpContext context, IBench bench, bool hasReport)
    {
        if (await ViewAsync(buildId, context, bench, hasReport) is not { } view)
            return TroubleEndpoints.Missing("There is no such build.");
        var form = await PostedForm.ReadAsync(context);
        var problems = form.Problems.Count > 0 ? form.Problems : await SignAsync(buildId, form, context, bench);
        return FormAnswer.Of<RecordPage>(context, form, problems, refusal => view with { Refusal = refusal }, view.Person, $"{view.Address}#sign-off");
    }

    private static async Task<IReadOnlyList<string>> SignAsync(string buildId, PostedForm form, HttpContext context, IBench bench)
    {
        var person = form.Person("");
        if (person.Length == 0 || form.Text("statement").Length == 0)
            return ["A signature needs a name and a statement. Fill in both."];
        // Who is signed in signs in the role that the bench gave, not in one that the form says.
        var role = Visit.Of(context) is { } who ? RolePolicy.Word(who.Role) : form.Text("role");
        return Sentences(await bench.SignOffAsync(buildId, new SignOffRequest(person, role, form.Text("statement"), form.Key), context.RequestAborted));
    }

    private static async Task<IReadOnlyList<string>> HandOverAsync(
        string buildId, PostedForm form, RecordView view, IBench bench, CancellationToken cancellation)
    {
        var person = form.Person(view.Person);
        switch (form.Name)
        {
            case "deviation" when form.Text("note").Length == 0:
                return ["Nothing is noted. Say what differs from the guide or the drawing."];
            case "deviation":
                var deviation = new DeviationRequest(form.Text("subject"), form.Text("note"), person, form.Key);
                return Sentences(await bench.NoteDeviationAsync(buildId, deviation, cancellation));
            default:
                return ["This form is not known here, so nothing was entered. Use one of the forms of this page."];
        }
    }

    private static async Task<RecordView?> ViewAsync(string buildId, HttpContext context, IBench bench, bool hasReport) =>
        await bench.StateAsync(buildId, context.RequestAborted) is { } state
            ? new RecordView(state, PersonCookie.Read(context, state.Build.Builder), hasReport, null)
            : null;

    private static IReadOnlyList<string> Sentences(Outcome<BenchState> outcome) => [.. outcome.Diagnostics.Select(Refusal.Sentence)];
}
