using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.SecondFactor;

/// <summary>A person's own second factor: on, off, new codes on paper.</summary>
internal static class SecondFactorEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.SecondFactor, (HttpContext context, SecondFactorDesk desk) => PageResult.Of<SecondFactorPage>(new SecondFactorView(desk.StandingOf(Who(context)), null))).Needs(Permission.See);
        routes.MapPost(Addresses.SecondFactor, ChangeAsync).Needs(Permission.See);
    }

    private static async Task<IResult> ChangeAsync(HttpContext context, SecondFactorDesk desk, AccessNews news)
    {
        var form = await PostedForm.ReadAsync(context);
        var (who, caller) = (Who(context), CallerAddress.Of(context));
        if (form.Problems.Count > 0)
            return Page(desk, who, new Refusal(form.Name, form.Problems, new Dictionary<string, string>()), StatusCodes.Status422UnprocessableEntity);
        var (password, code) = (form.Whole("password") ?? "", form.Text("code"));
        switch (form.Name)
        {
            case "begin":
                return Answer(context, desk, news, form, await desk.BeginAsync(who, password, caller, context.RequestAborted), "made a key for a second factor", (view, key) => view with { Key = Shown(context, who, key) });
            case "confirm":
                return Answer(context, desk, news, form, await desk.ConfirmAsync(who, code, caller, context.RequestAborted), "put a second factor on", (view, codes) => view with { Codes = codes });
            case "codes":
                return Answer(context, desk, news, form, await desk.NewCodesAsync(who, password, code, caller, context.RequestAborted), "made new codes on paper", (view, codes) => view with { Codes = codes });
            case "off":
                return Answer(context, desk, news, form, await desk.TakeOffAsync(who, password, code, caller, context.RequestAborted), "took the second factor off", (view, _) => view);
            default:
                return new SeeOther(Addresses.SecondFactor);
        }
    }

    // What is shown once is the answer to the form itself: no address shows it again, and no browser is to keep it.
    private static IResult Answer<T>(HttpContext context, SecondFactorDesk desk, AccessNews news, PostedForm form, Outcome<T> outcome, string what, Func<SecondFactorView, T, SecondFactorView> shown)
        where T : class
    {
        var (who, caller) = (Who(context), CallerAddress.Of(context));
        if (outcome.Value is not { } value)
        {
            news.ChangeRefused(who, caller);
            // Neither the password nor a code comes back with the page.
            return Page(desk, who, new Refusal(form.Name, [.. outcome.Diagnostics.Select(Refusal.Sentence)], new Dictionary<string, string>()), Refusal.StatusOf(outcome.Diagnostics));
        }

        news.Changed(who, caller, what);
        ShownOnce.Mark(context);
        return PageResult.Of<SecondFactorPage>(shown(new SecondFactorView(desk.StandingOf(who), null), value));
    }

    private static IResult Page(SecondFactorDesk desk, SignedIn who, Refusal refusal, int status) =>
        PageResult.Of<SecondFactorPage>(new SecondFactorView(desk.StandingOf(who), refusal), status);

    private static NewKey Shown(HttpContext context, SignedIn who, OneTimeKey key) => new(key.Grouped, key.AddressFor(context.Request.Host.Host, who.Name));

    private static SignedIn Who(HttpContext context) => Visit.Of(context) ?? throw new InvalidOperationException("The gate lets nobody here who is not signed in.");
}
