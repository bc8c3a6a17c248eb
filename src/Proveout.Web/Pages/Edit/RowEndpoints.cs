using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>Parts, conductors, routes, and the machine's head: a table, and the form of one row.</summary>
internal static class RowEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        routes.MapGet("/machines/{machineId}/edit/{section}", (string machineId, string section, HttpContext context) => Show(machineId, section, context, desk));
        routes.MapPost("/machines/{machineId}/edit/{section}", (string machineId, string section, HttpContext context) => EnterAsync(machineId, section, context, desk));
    }

    private static IResult Show(string machineId, string section, HttpContext context, IEditDesk desk)
    {
        if (RowFields.SectionOf(section) is null || desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine, or no such page of its editor.");
        var asked = context.Request.Query;
        var row = asked["row"].ToString();
        var page = ViewOf(EditForm.Show(context, view), section, row, asked["new"] == "1", asked["find"].ToString(), EditForm.Number(asked["first"])) with { IsSaved = asked.ContainsKey("saved") };
        if (page.IsNew)
            page = page with { Given = new Dictionary<string, string> { ["name"] = EditTables.NextName(view.Design, section), ["from"] = asked["from"].ToString(), ["to"] = asked["to"].ToString() } };
        return row.Length > 0 && page.Given.Count == 0 ? TroubleEndpoints.Missing($"There is no {row} in this machine any more.") : PageResult.Of<RowsPage>(page);
    }

    private static async Task<IResult> EnterAsync(string machineId, string section, HttpContext context, IEditDesk desk)
    {
        if (RowFields.SectionOf(section) is null || desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine, or no such page of its editor.");
        var form = await PostedForm.ReadAsync(context);
        var row = form.Text("row");
        var edits = EditsOf(desk, view, section, row, form);
        var answer = form.Problems.Count > 0 ? null
            : row.Length == 0 && section != EditedThing.Head && form.Text("called").Length == 0 ? Unnamed(view)
            : desk.Save(machineId, new SaveEdits(EditForm.BaseOf(form), edits, form.Person("")));
        var name = form.Text("do").StartsWith("remove", StringComparison.Ordinal) ? "" : form.Text("called");
        return EditForm.Answer<RowsPage>(
            context,
            form,
            answer,
            () => EditForm.Show(context, desk.View(machineId)!),
            page => ViewOf(page, section, row, row.Length == 0 && section != EditedThing.Head, "", 0),
            $"{Addresses.Edit(view.Machine.Id, section)}?saved=1#{(name.Length > 0 ? $"row-{Uri.EscapeDataString(name)}" : "rows")}");
    }

    private static IReadOnlyList<MachineEdit> EditsOf(IEditDesk desk, EditView view, string section, string row, PostedForm form) => form.Text("do") switch
    {
        "remove" => RowEdits.Removal(view.Design, new(section, row), withConductors: false),
        "remove-all" => RowEdits.Removal(view.Design, new(section, row), withConductors: true),
        // What the person saw tells what was typed; a field that somebody else changed meanwhile was not.
        _ => RowEdits.Of(desk.FilesAt(view.Machine.Id, EditForm.BaseOf(form)) ?? view.Files, section, row, form.Text("called"), field => form.Whole($"f.{field.Name}")),
    };

    private static SaveAnswer Unnamed(EditView view) => new(
        view.Revision, [new Diagnostic("empty", new SourcePlace("editor", 0, 0), "It has no name.", "Give it one that nothing of its kind has yet.")], []);

    private static RowPageView ViewOf(EditPageView page, string section, string row, bool isNew, string find, int first)
    {
        var given = section == EditedThing.Head ? HeadOf(page.Edit)
            : row.Length > 0 ? FieldTexts.Of(page.Edit.Files, new(section, row))
            : new Dictionary<string, string>();
        return new(page, section, EditTables.Of(page.Edit, section, find), row, isNew, given, find, Math.Max(0, first));
    }

    private static Dictionary<string, string> HeadOf(EditView view) =>
    (
        from thing in FieldTexts.OfSection(view.Files, EditedThing.Head)
        from text in thing.Texts
        select (Key: $"{thing.Name} {text.Key}".Trim(), text.Value)).ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);
}
