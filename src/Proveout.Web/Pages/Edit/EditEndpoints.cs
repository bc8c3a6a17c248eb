using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>A machine in the editor: what there is to change, what the review finds, one step back or forth, and its revisions.</summary>
internal static class EditEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        routes.MapGet("/machines/{machineId}/edit", (string machineId, HttpContext context) =>
            desk.View(machineId) is { } view ? PageResult.Of<EditPage>(EditForm.Show(context, view)) : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapPost("/machines/{machineId}/edit", (string machineId, HttpContext context) => EnterAsync(machineId, context, desk));
        routes.MapGet("/machines/{machineId}/edit/revisions", (string machineId) =>
            desk.View(machineId) is { } view && desk.Revisions(machineId) is { } revisions
                ? PageResult.Of<RevisionsPage>(new RevisionsPageView(view.Machine, revisions, [.. view.Files.Select(file => file.File)]))
                : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapGet("/machines/{machineId}/edit/revisions/{revision:int}/{file}", (string machineId, int revision, string file) =>
            desk.FilesAt(machineId, revision)?.FirstOrDefault(each => each.File == file) is { } text
                ? TypedResults.Text(text.Text, "text/plain; charset=utf-8")
                : TroubleEndpoints.Missing("There is no such file."));
    }

    private static async Task<IResult> EnterAsync(string machineId, HttpContext context, IEditDesk desk)
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var form = await PostedForm.ReadAsync(context);
        if (form.Problems.Count == 0 && form.Name == "own")
            return await CopyAsync(view, form, context, desk);
        var person = form.Person("");
        var answer = form.Problems.Count > 0 ? null
            : form.Name == "redo" ? desk.Redo(machineId, EditForm.BaseOf(form), person)
            : desk.Undo(machineId, EditForm.BaseOf(form), person);
        return EditForm.Answer<EditPage>(context, form, answer, () => EditForm.Show(context, desk.View(machineId)!), page => page, $"{Addresses.Edit(view.Machine.Id)}#steps");
    }

    private static async Task<IResult> CopyAsync(EditView view, PostedForm form, HttpContext context, IEditDesk desk)
    {
        var made = await desk.CopyAsync(view.Machine.Id, form.Text("name"), form.Person(""), context.RequestAborted);
        return FormAnswer.Of<EditPage>(
            context,
            form,
            [.. made.Diagnostics.Select(Refusal.Sentence)],
            refusal => EditForm.Show(context, view) with { Refusal = refusal, Person = form.Person("") },
            "",
            Addresses.Edit(made.Value?.Id ?? view.Machine.Id));
    }
}
