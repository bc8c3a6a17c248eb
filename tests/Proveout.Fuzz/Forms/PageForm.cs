using System.Net;
using System.Text.RegularExpressions;

namespace Proveout.Fuzz;

/// <summary>A form as it stands on a page.</summary>
/// <param name="Address">Where it is posted to.</param>
/// <param name="Fields">Names and values of its fields.</param>
internal sealed partial record PageForm(string Address, IReadOnlyList<(string Name, string Value)> Fields)
{
    /// <summary>The forms of a page that are posted.</summary>
    public static IReadOnlyList<PageForm> On(string html) =>
    [
        .. Form().Matches(html).Select(form => new PageForm(
            WebUtility.HtmlDecode(Attribute(form.Groups[1].Value, "action")).Split('#')[0],
            [.. Field().Matches(form.Groups[2].Value).Select(field => (WebUtility.HtmlDecode(Attribute(field.Value, "name")), WebUtility.HtmlDecode(Attribute(field.Value, "value")))).Where(field => field.Item1.Length > 0)])),
    ];

    private static string Attribute(string tag, string name) => Regex.Match(tag, $" {name}=\"([^\"]*)\"").Groups[1].Value;

    [GeneratedRegex("<form method=\"post\"([^>]*)>(.*?)</form>", RegexOptions.Singleline)]
    private static partial Regex Form();

    [GeneratedRegex("<(?:input|textarea|select|button)\\b[^>]*>")]
    private static partial Regex Field();
}
