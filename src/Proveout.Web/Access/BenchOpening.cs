using System.Security.Authentication;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Web.Pages.Devices;
using Proveout.Web.Pages.SecondFactor;
using Proveout.Web.Pages.SignIn;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>What a bench that others may call has besides: who may come in, its names, its proxies, its certificate.</summary>
internal static class BenchOpening
{
    public static void AddServices(IServiceCollection services, NetworkOpening? opening)
    {
        if (opening is null)
            return;
        services.AddSingleton<IAttemptLimits>(_ => new AttemptLimits(opening.Tally, opening.Clock));
        services.AddSingleton(provider => new SignInDesk(opening.Store, provider.GetRequiredService<IAttemptLimits>(), opening.Clock));
        services.AddSingleton(provider => new SecondFactorDesk(opening.Store, provider.GetRequiredService<IAttemptLimits>(), opening.Clock));
        services.AddSingleton<AccessNews>();
        if (opening.Certificate is not null)
            services.PostConfigure<AntiforgeryOptions>(guard => (guard.Cookie.Name, guard.Cookie.SecurePolicy) = ("__Host-form", CookieSecurePolicy.Always));
        services.Configure<HostFilteringOptions>(filter => filter.AllowedHosts = [.. filter.AllowedHosts, .. opening.Names]);
    }

    public static void MapPages(IEndpointRouteBuilder routes, NetworkOpening? opening)
    {
        if (opening is null)
            return;
        SignInEndpoints.Map(routes);
        DevicesEndpoints.Map(routes);
        SecondFactorEndpoints.Map(routes);
    }

    /// <summary>Takes a proxy's word on the caller's address and on TLS, and only the named proxies'. The name that was called is not taken from them: they pass it on.</summary>
    public static void UseProxies(WebApplication app, NetworkOpening? opening)
    {
        if (opening is not { Proxies.Count: > 0 })
            return;
        var headers = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto, ForwardLimit = 1 };
        headers.KnownIPNetworks.Clear();
        headers.KnownProxies.Clear();
        foreach (var proxy in opening.Proxies)
            headers.KnownProxies.Add(proxy);
        app.UseForwardedHeaders(headers);
    }

    public static void UseTls(ListenOptions listen, NetworkOpening? opening)
    {
        if (opening?.Certificate is not { } certificate)
            return;
        listen.UseHttps(certificate, tls => tls.SslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13);
    }
}
