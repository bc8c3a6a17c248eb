using Microsoft.AspNetCore.Routing;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>The pages of the editor.</summary>
internal static class EditRoutes
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        EditEndpoints.Map(routes, desk);
        JumperEndpoints.Map(routes, desk);
        DrawEndpoints.Map(routes, desk);
        EditFileEndpoints.Map(routes, desk);
        WiresEndpoints.Map(routes, desk);
        RowEndpoints.Map(routes, desk);
    }
}
