using System.Net;
using System.Text.RegularExpressions;

namespace Proveout.Web.Tests;

/// <summary>An answer of the bench.</summary>
internal sealed partial record Page(HttpStatusCode Status, string Html, HttpResponseMessage Answer)
{
    public string? Location => Answer.Headers.Location?.OriginalString;

    /// <summary>The page's words without markup, as a person reads them.</summary>
    public string Text => WebUtility.HtmlDecode(Blank().Replace(Tag().Replace(Html, " "), " "));

    public static async Task<Page> ReadAsync(HttpResponseMessage answer) =>
        new(answer.StatusCode, await answer.Content.ReadAsStringAsync(), answer);

    public string Header(string name) =>
        string.Join(", ", (Answer.Headers.TryGetValues(name, out var values) || Answer.Content.Headers.TryGetValues(name, out values)) ? values : []);

    public Dictionary<string, string> HiddenFields(string form)
    {
        var start = Html.IndexOf($"data-form=\"{form}\"", StringComparison.Ordinal);
        Assert.True(start >= 0, $"The page has no form {form}.");
        var end = Html.IndexOf("</form>", start, StringComparison.Ordinal);
        return Hidden().Matches(Html[start..end]).ToDictionary(field => field.Groups[1].Value, field => WebUtility.HtmlDecode(field.Groups[2].Value));
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")]
    private static partial Regex Hidden();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Blank();
}
