using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.SignIn;

/// <summary>The way in, by password or by join code, and out.</summary>
internal static class SignInEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.SignIn, (string? to, SignInDesk desk) => PageResult.Of<SignInPage>(new SignInView(Addresses.Own(to), "", "", null) { AsksForCode = desk.AsksForCodes })).Needs(Permission.Open);
        routes.MapPost(Addresses.SignIn, SignInAsync).Needs(Permission.Open);
        routes.MapGet(Addresses.Join, (string? code, SignInDesk desk) => PageResult.Of<JoinPage>(new SignInView(Addresses.Front, "", code ?? "", null) { AsksForCode = desk.AsksForCodes })).Needs(Permission.Open);
        routes.MapPost(Addresses.Join, JoinAsync).Needs(Permission.Open);
        routes.MapPost(Addresses.SignOut, SignOutAsync).Needs(Permission.See);
    }

    private static async Task<IResult> SignInAsync(HttpContext context, SignInDesk desk, AccessNews news)
    {
        var form = await PostedForm.ReadAsync(context);
        var view = new SignInView(Addresses.Own(form.Text("to")), form.Text("name"), "", null) { AsksForCode = desk.AsksForCodes };
        if (form.Problems.Count > 0)
            return Refuse<SignInPage>(view, "sign-in", form.Problems);
        var caller = CallerAddress.Of(context);
        var outcome = await desk.SignInAsync(view.Name, form.Whole("password") ?? "", form.Text("second"), caller, context.RequestAborted);
        if (outcome.Value is { } admitted)
            return Admit(context, desk, news, admitted, "password", caller, view.To);
        news.Refused(desk.Known(view.Name), caller, "password");
        return Refuse<SignInPage>(view, "sign-in", [.. outcome.Diagnostics.Select(Refusal.Sentence)], Refusal.StatusOf(outcome.Diagnostics));
    }

    private static async Task<IResult> JoinAsync(HttpContext context, SignInDesk desk, AccessNews news)
    {
        var form = await PostedForm.ReadAsync(context);
        var view = new SignInView(Addresses.Front, "", "", null) { AsksForCode = desk.AsksForCodes };
        if (form.Problems.Count > 0)
            return Refuse<JoinPage>(view with { Code = form.Text("code") }, "join", form.Problems);
        var caller = CallerAddress.Of(context);
        var outcome = await desk.JoinAsync(form.Text("code"), form.Text("second"), caller, context.RequestAborted);
        if (outcome.Value is { } admitted)
            return Admit(context, desk, news, admitted, "join code", caller, view.To);
        news.Refused(null, caller, "join code");
        return Refuse<JoinPage>(view, "join", [.. outcome.Diagnostics.Select(Refusal.Sentence)], Refusal.StatusOf(outcome.Diagnostics));
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, SignInDesk desk, AccessNews news)
    {
        var form = await PostedForm.ReadAsync(context);
        if (form.Problems.Count > 0 || Visit.Of(context) is not { } who)
            return new SeeOther(Addresses.Devices);
        desk.SignOut(who, session => session == who.Session);
        news.WentOut(who);
        SessionCookie.Remove(context);
        // What "back" would show again is thrown away too, where the browser does it (W3C Clear Site Data: over TLS only).
        context.Response.Headers["Clear-Site-Data"] = "\"cache\"";
        return new SeeOther(Addresses.SignIn);
    }

    // A new token every time, and the one before ends, so that nobody can be made to use a session that another knows.
    private static SeeOther Admit(HttpContext context, SignInDesk desk, AccessNews news, Admittance admitted, string by, Caller caller, string to)
    {
        if (Visit.Of(context) is { } before)
            desk.SignOut(before, session => session == before.Session);
        SessionCookie.Write(context, admitted.Token);
        news.CameIn(admitted.Who, caller, by);
        return new SeeOther(to);
    }

    private static IResult Refuse<TPage>(SignInView view, string form, IReadOnlyList<string> sentences, int status = StatusCodes.Status422UnprocessableEntity)
        where TPage : IComponent =>
        PageResult.Of<TPage>(view with { Refusal = new Refusal(form, sentences, new Dictionary<string, string>()) }, status);
}
