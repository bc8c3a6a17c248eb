using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>A new conductor by tapping: one end, then the other.</summary>
internal static class DrawEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk) => routes.MapGet("/machines/{machineId}/edit/draw", (string machineId, HttpContext context) =>
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var asked = context.Request.Query;
        var from = TerminalReference.TryParse(asked["from"].ToString()) is { } end && view.Design.FindTerminal(end) is not null ? end.ToString() : "";
        return PageResult.Of<DrawPage>(new DrawPageView(EditForm.Show(context, view), view.Design.FindPart(asked["part"].ToString()), from));
    });
}
