using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Budget;

/// <summary>The error budget to the nozzle.</summary>
internal static class BudgetEndpoints
{
    public const string Form = "budget";

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk) =>
        new MeasuringPage<SheetView>(desk)
        {
            Fields = [.. BudgetFields.All.Select(field => field.Name)],
            Judge = (_, typed, _) => Task.FromResult(new Judged<SheetView>(BudgetSheet.Of(typed), [])),
            Record = (sheet, keep) => Measurements.Of(Form, sheet, keep),
            Show = (view, _) => PageResult.Of<BudgetPage>(view, view.Status),
        }.Map(routes, Addresses.Budget);
}
