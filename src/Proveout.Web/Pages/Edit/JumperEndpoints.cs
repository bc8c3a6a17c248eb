using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>The jumpers of every part that has some.</summary>
internal static class JumperEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IEditDesk desk)
    {
        routes.MapGet("/machines/{machineId}/edit/jumpers", (string machineId, HttpContext context) =>
            desk.View(machineId) is { } view ? PageResult.Of<JumpersPage>(EditForm.Show(context, view)) : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapPost("/machines/{machineId}/edit/jumpers", (string machineId, HttpContext context) => EnterAsync(machineId, context, desk));
    }

    private static async Task<IResult> EnterAsync(string machineId, HttpContext context, IEditDesk desk)
    {
        if (desk.View(machineId) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var form = await PostedForm.ReadAsync(context);
        var part = view.Design.FindPart(form.Name);
        if (part is null && form.Problems.Count == 0)
            return TroubleEndpoints.Missing($"There is no {form.Name} in this machine any more.");
        var answer = form.Problems.Count > 0 || part is null
            ? null
            : desk.Save(machineId, new SaveEdits(EditForm.BaseOf(form), RowEdits.Jumpers(part, at => form.Whole(FormattableString.Invariant($"jumper{at}"))), form.Person("")));
        return EditForm.Answer<JumpersPage>(
            context, form, answer, () => EditForm.Show(context, desk.View(machineId)!), page => page, $"{Addresses.Edit(view.Machine.Id, "jumpers")}#part-{form.Name}");
    }
}
