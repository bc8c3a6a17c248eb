using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>The text of a machine's file, with its errors in place.</summary>
internal static class EditFileEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        routes.MapGet("/machines/{machineId}/edit/file", (string machineId, HttpContext context) => Show(machineId, context, desk));
        routes.MapPost("/machines/{machineId}/edit/file", (string machineId, HttpContext context) => EnterAsync(machineId, context, desk));
    }

    private static IResult Show(string machineId, HttpContext context, IEditDesk desk)
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var asked = context.Request.Query;
        var name = asked["name"].ToString() is { Length: > 0 } given ? given : view.Files[0].File;
        var draft = desk.Draft(machineId, EditForm.Number(asked["draft"]));
        var text = draft?.Files.FirstOrDefault(file => file.Name == name)?.Text ?? view.Files.FirstOrDefault(file => file.File == name)?.Text;
        if (text is null)
            return TroubleEndpoints.Missing("The machine has no such file.");
        var page = EditForm.Show(context, view) with { Base = draft?.Base ?? view.Revision };
        return PageResult.Of<EditFilePage>(new EditFilePageView(page, name, text, draft?.Number ?? 0, draft is null ? [] : desk.Check(machineId, name, text)));
    }

    private static async Task<IResult> EnterAsync(string machineId, HttpContext context, IEditDesk desk)
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var form = await PostedForm.ReadAsync(context, longField: "text");
        var (name, text, draft) = (form.Text("name"), form.Whole("text") ?? "", EditForm.Number(form.Text("draft")));
        var only = form.Text("do") == "check";
        var answer = form.Problems.Count > 0 ? null
            : only ? new SaveAnswer(view.Revision, desk.Check(machineId, name, text), [])
            : desk.Save(machineId, new SaveText(EditForm.BaseOf(form), name, text, draft, form.Person("")));
        if (only && answer is { IsSaved: true })
            return PageResult.Of<EditFilePage>(new EditFilePageView(EditForm.Show(context, view) with { Base = EditForm.BaseOf(form) }, name, text, draft, []));
        return EditForm.Answer<EditFilePage>(
            context,
            form,
            answer,
            () => EditForm.Show(context, desk.View(machineId)!),
            page => new EditFilePageView(page, name, text, answer?.Draft is > 0 and var kept ? kept : draft, answer?.Problems ?? []) { IsKept = answer?.Draft > 0 },
            $"{Addresses.EditFile(view.Machine.Id, name)}#text");
    }
}
