using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>What follows a form that enters something: its page again with what was typed and why not, or the page that shows it entered.</summary>
internal static class FormAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="context">The request; the person is remembered with it.</param>
    /// <param name="form">The form.</param>
    /// <param name="problems">Why nothing was entered; empty when it was.</param>
    /// <param name="refused">The page's view with the refusal.</param>
    /// <param name="person">Who enters when the form does not say.</param>
    /// <param name="entered">Address that shows what was entered.</param>
    public static IResult Of<TPage>(HttpContext context, PostedForm form, IReadOnlyList<string> problems, Func<Refusal, object> refused, string person, string entered)
        where TPage : IComponent
    {
        if (problems.Count > 0)
            return PageResult.Of<TPage>(refused(form.Refuse(problems)), StatusCodes.Status422UnprocessableEntity);
        PersonCookie.Remember(context, form.Person(person));
        return new SeeOther(entered);
    }
}
