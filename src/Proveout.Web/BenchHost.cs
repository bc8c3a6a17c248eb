using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Web.Hosting.Watching;
using Proveout.Web.Pages.Acceptance;
using Proveout.Web.Pages.Air;
using Proveout.Web.Pages.Ask;
using Proveout.Web.Pages.Belts;
using Proveout.Web.Pages.Book;
using Proveout.Web.Pages.Budget;
using Proveout.Web.Pages.Builds;
using Proveout.Web.Pages.Check;
using Proveout.Web.Pages.CheckList;
using Proveout.Web.Pages.Drawings;
using Proveout.Web.Pages.Edit;
using Proveout.Web.Pages.Energise;
using Proveout.Web.Pages.Frame;
using Proveout.Web.Pages.Front;
using Proveout.Web.Pages.Health;
using Proveout.Web.Pages.Heat;
using Proveout.Web.Pages.HeatLog;
using Proveout.Web.Pages.Level;
using Proveout.Web.Pages.Live;
using Proveout.Web.Pages.Measure;
using Proveout.Web.Pages.Motor;
using Proveout.Web.Pages.Offline;
using Proveout.Web.Pages.Paper;
using Proveout.Web.Pages.Parts;
using Proveout.Web.Pages.Photo;
using Proveout.Web.Pages.Piece;
using Proveout.Web.Pages.Plan;
using Proveout.Web.Pages.Record;
using Proveout.Web.Pages.Report;
using Proveout.Web.Pages.Resonance;
using Proveout.Web.Pages.Review;
using Proveout.Web.Pages.Settings;
using Proveout.Web.Pages.Stages;
using Proveout.Web.Pages.Start;
using Proveout.Web.Pages.Stopwatch;
using Proveout.Web.Pages.Tension;
using Proveout.Web.Pages.Trouble;
using Proveout.Web.Pages.Walk;
using Proveout.Web.Pages.Wire;
using Proveout.Workshop;

namespace Proveout.Web;

/// <summary>The bench as server-rendered pages.</summary>
public static class BenchHost
{
    /// <summary>Builds the host; it listens once it is started.</summary>
    /// <param name="options">Where it listens.</param>
    /// <param name="desks">What the pages show and enter.</param>
    /// <exception cref="ArgumentException">The address is not a loopback address.</exception>
    public static WebApplication Build(BenchHostOptions options, Desks desks)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Opening is null && !IPAddress.IsLoopback(options.Address))
            throw new ArgumentException("A bench that asks nobody who they are listens on a loopback address only.", nameof(options));

        // The empty builder reads no settings file and no environment, so nothing can open the bench to a network by accident.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        Listen(builder.WebHost, options);
        AddServices(builder.Services, desks, options);
        BenchOpening.AddServices(builder.Services, options.Opening);
        Logs.Add(builder.Logging, options.Log);
        if (options.Metrics)
            builder.Services.AddSingleton<MeterBook>();
        var app = builder.Build();
        FormGuard.MakeFirstKey(app.Services, desks.FormKeys);
        UseMiddleware(app, options.Opening);
        var workshop = app.MapWorkshop();
        MapPages(workshop, desks);
        BenchOpening.MapPages(workshop, options.Opening);
        MetricsEndpoints.Map(workshop);
        LifeLog.Watch(app);
        if (desks.Health is { } health)
            HealthEndpoints.Map(workshop, health);
        return app;
    }

    private static void Listen(ConfigureWebHostBuilder host, BenchHostOptions options) =>
        host.UseKestrelCore().UseKestrelHttpsConfiguration().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = UploadLimits.RequestBytes;
            kestrel.Listen(options.Address, options.Port, listen => BenchOpening.UseTls(listen, options.Opening));
        });

    private static void AddServices(IServiceCollection services, Desks desks, BenchHostOptions options)
    {
        services.AddSingleton(desks.Bench);
        services.AddSingleton(desks.Designs);
        services.AddSingleton(desks.Receiving);
        services.AddSingleton(desks.Handover);
        services.AddSingleton(desks.Books);
        services.AddSingleton(desks.Builds);
        services.AddSingleton(MeterAtHand.At(options.Meter));
        services.AddRouting();
        services.AddRazorComponents();
        services.Configure<HostFilteringOptions>(filter =>
        {
            filter.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"];
            filter.IncludeFailureMessage = false;
        });
        services.Configure<FormOptions>(form => form.MultipartBodyLengthLimit = UploadLimits.RequestBytes);
        FormGuard.Add(services, desks.FormKeys);
    }

    private static void UseMiddleware(WebApplication app, NetworkOpening? opening)
    {
        BenchOpening.UseProxies(app, opening);
        app.UseMiddleware<RequestLog>();
        app.UseMiddleware<SecurityHeaders>();
        app.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = TroubleEndpoints.ShowFailureAsync });
        app.UseStatusCodePages(TroubleEndpoints.ShowStatusAsync);
        app.UseMiddleware<HostFilteringMiddleware>();
        app.UseRouting();
        if (opening is not null)
            app.UseMiddleware<AccessGate>();
    }

    private static void MapPages(IEndpointRouteBuilder routes, Desks desks)
    {
        var (reports, measuring) = (desks.Reports, desks.Measuring);
        AssetEndpoints.Map(routes);
        OfflineEndpoints.Map(routes);
        FrontEndpoints.Map(routes);
        CheckEndpoints.Map(routes);
        HeardEndpoints.Map(routes);
        CheckListEndpoints.Map(routes);
        PartsEndpoints.Map(routes);
        RecordEndpoints.Map(routes, hasReport: reports is not null);
        PhotoEndpoints.Map(routes);
        LiveEndpoints.Map(routes);
        PlanEndpoints.Map(routes);
        BuildsEndpoints.Map(routes);
        EnergiseEndpoints.Map(routes);
        AskEndpoints.Map(routes);
        WalkEndpoints.Map(routes);
        StopwatchEndpoints.Map(routes);
        BeltsEndpoints.Map(routes, measuring);
        HeatEndpoints.Map(routes);
        HandLogEndpoints.Map(routes);
        SettingsEndpoints.Map(routes);
        StagesEndpoints.Map(routes);
        AcceptanceEndpoints.Map(routes);
        AirEndpoints.Map(routes);
        ReviewEndpoints.Map(routes);
        PaperEndpoints.Map(routes);
        BookEndpoints.Map(routes);
        WireEndpoints.Map(routes);
        DrawingsEndpoints.Map(routes);
        TensionEndpoints.Map(routes, measuring);
        MotorEndpoints.Map(routes, measuring);
        if (measuring is not null)
        {
            DataFileEndpoints.Map(routes, measuring);
            FrameEndpoints.Map(routes, measuring);
            LevelEndpoints.Map(routes, measuring);
            PieceEndpoints.Map(routes, measuring);
            ResonanceEndpoints.Map(routes, measuring);
            HeatLogEndpoints.Map(routes, measuring);
            BudgetEndpoints.Map(routes, measuring);
        }

        if (desks.Editing is not null)
            EditRoutes.Map(routes, desks.Editing);
        if (desks.Starting is not null)
            StartEndpoints.Map(routes, desks.Starting);
        if (reports is not null)
            ReportEndpoints.Map(routes, reports);
        TroubleEndpoints.Map(routes);
    }
}
