using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Devices;

/// <summary>The devices on which a person is signed in; only that person's own.</summary>
internal static class DevicesEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Devices, (HttpContext context, SignInDesk desk) => Page(context, desk, null)).Needs(Permission.See);
        routes.MapPost(Addresses.Devices, SignOutAsync).Needs(Permission.See);
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, SignInDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        if (form.Problems.Count > 0)
            return Page(context, desk, form.Refuse(form.Problems));
        var who = Who(context);
        if (form.Text("device") == "others")
            desk.SignOut(who, session => session != who.Session);
        else if (Guid.TryParse(form.Text("device"), out var device))
            desk.SignOut(who, session => session == device);
        return new SeeOther(Addresses.Devices);
    }

    private static IResult Page(HttpContext context, SignInDesk desk, Refusal? refusal) => PageResult.Of<DevicesPage>(
        new DevicesView(Who(context), desk.Devices(Who(context)), refusal), refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static SignedIn Who(HttpContext context) => Visit.Of(context) ?? throw new InvalidOperationException("The gate lets nobody here who is not signed in.");
}
