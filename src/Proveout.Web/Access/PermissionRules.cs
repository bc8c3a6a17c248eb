using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Gives every address what it asks for.</summary>
internal static class PermissionRules
{
    /// <summary>
    /// A group of addresses that show with GET and enter with anything else, as RFC 9110, 9.2.1 has it, unless an address says otherwise. What is mapped outside of a group asks for
    /// nothing, and the gate lets nobody in there.
    /// </summary>
    public static RouteGroupBuilder MapWorkshop(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("");
        ((IEndpointConventionBuilder)group).Finally(AddDefault);
        return group;
    }

    /// <summary>Says what an address asks for.</summary>
    public static TBuilder Needs<TBuilder>(this TBuilder address, Permission permission, bool isUse = true)
        where TBuilder : IEndpointConventionBuilder =>
        address.WithMetadata(new NeedsPermission(permission) { IsUse = isUse });

    private static void AddDefault(EndpointBuilder endpoint)
    {
        if (endpoint.Metadata.OfType<NeedsPermission>().Any())
            return;
        var methods = endpoint.Metadata.OfType<IHttpMethodMetadata>().LastOrDefault()?.HttpMethods ?? [];
        var shows = methods.Count > 0 && methods.All(method => HttpMethods.IsGet(method) || HttpMethods.IsHead(method));
        endpoint.Metadata.Add(new NeedsPermission(shows ? Permission.See : Permission.Enter));
    }
}
