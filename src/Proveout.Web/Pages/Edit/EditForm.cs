using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>Forms of the editor: what they carry, and what follows them.</summary>
internal static class EditForm
{
    /// <summary>A page of the machine as it is now.</summary>
    public static EditPageView Show(HttpContext context, EditView view) => new(view, PersonCookie.Read(context, ""), null) { Base = view.Revision };

    /// <summary>The revision that a form was made on.</summary>
    public static int BaseOf(PostedForm form) => int.TryParse(form.Text("base"), NumberStyles.None, CultureInfo.InvariantCulture, out var revision) ? revision : 0;

    /// <summary>A number of an address or form; 0 when it is none.</summary>
    public static int Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    /// <summary>The page again with what was typed and why nothing was saved, or the page that shows it saved.</summary>
    /// <param name="context">The request; the person is remembered with it.</param>
    /// <param name="form">The form.</param>
    /// <param name="answer">What became of the save; null when the form itself could not be taken.</param>
    /// <param name="refused">The machine as it is now; the refusal and what somebody else changed are put into it.</param>
    /// <param name="view">The page's view of that.</param>
    /// <param name="saved">Address that shows what was saved.</param>
    public static IResult Answer<TPage>(HttpContext context, PostedForm form, SaveAnswer? answer, Func<EditPageView> refused, Func<EditPageView, object> view, string saved)
        where TPage : IComponent
    {
        if (answer is { IsSaved: true })
        {
            PersonCookie.Remember(context, form.Person(""));
            return new SeeOther(saved);
        }

        IReadOnlyList<string> problems = answer is null ? form.Problems
            : answer.Conflicts.Count > 0 ? ["Somebody else changed the same thing and saved first. Both are shown below. Save again to put yours in the place of theirs, or leave this page, and theirs stays."]
            : [.. answer.Problems.Select(problem => problem.Place.Line > 0 ? $"{problem.Place}: {Refusal.Sentence(problem)}" : Refusal.Sentence(problem))];
        var shown = refused();
        var page = shown with
        {
            Refusal = form.Refuse(problems),
            Conflicts = answer?.Conflicts ?? [],
            // Who saves again has seen what the other saved.
            Base = answer is { Conflicts.Count: > 0 } ? answer.Revision : BaseOf(form),
            Person = form.Person(shown.Person),
        };
        return PageResult.Of<TPage>(view(page), answer is { Conflicts.Count: > 0 } ? StatusCodes.Status409Conflict : StatusCodes.Status422UnprocessableEntity);
    }
}
