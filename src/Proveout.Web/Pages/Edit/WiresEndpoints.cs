using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>The wire list: out to a spreadsheet, and back with a look at what it changes before anything is saved.</summary>
internal static class WiresEndpoints
{
    private const int LongestList = 5_000_000;

    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        routes.MapGet("/machines/{machineId}/edit/wires", (string machineId, HttpContext context) =>
            desk.View(machineId) is { } view ? PageResult.Of<WiresPage>(new WiresPageView(EditForm.Show(context, view), null, false, null)) : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapGet("/machines/{machineId}/edit/wires.csv", (string machineId) =>
            desk.Wires(machineId) is { } list ? TypedResults.Text(list, "text/csv; charset=utf-8") : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapPost("/machines/{machineId}/edit/wires", (string machineId, HttpContext context) => EnterAsync(machineId, context, desk));
    }

    private static async Task<IResult> EnterAsync(string machineId, HttpContext context, IEditDesk desk)
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var form = await PostedForm.ReadAsync(context, longField: "list");
        var list = await ListAsync(form);
        var remove = form.Text("remove") == "yes";
        var look = form.Problems.Count > 0 || list is null ? null : desk.LookAtWires(machineId, list, remove);
        if (form.Text("do") != "save" && look?.Value is { } import)
            return PageResult.Of<WiresPage>(new WiresPageView(EditForm.Show(context, view) with { Person = form.Person(PersonCookie.Read(context, "")) }, list, remove, import));
        var answer = form.Problems.Count > 0 ? null
            : look is null ? new SaveAnswer(view.Revision, [new("no-list", new("editor", 0, 0), "No list was sent.", "Choose a file of at most 5 MB, or paste the list.")], [])
            : look.Value is { } found ? desk.Save(machineId, new SaveEdits(EditForm.BaseOf(form), found.Edits, form.Person("")))
            : new SaveAnswer(view.Revision, look.Diagnostics, []);
        return EditForm.Answer<WiresPage>(
            context,
            form,
            answer,
            () => EditForm.Show(context, desk.View(machineId)!),
            page => new WiresPageView(page, list, remove, look?.Value),
            Addresses.Edit(view.Machine.Id, "conductors"));
    }

    private static async Task<NamedText?> ListAsync(PostedForm form)
    {
        if (form.File("file") is { Length: > 0 and <= LongestList } file)
        {
            using var reader = new StreamReader(file.OpenReadStream());
            return new(Path.GetFileName(file.FileName), await reader.ReadToEndAsync());
        }

        return form.Whole("list") is { } typed && typed.Trim().Length > 0 ? new("list", typed) : null;
    }
}
