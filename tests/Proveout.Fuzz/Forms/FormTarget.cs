using System.Collections.Concurrent;
using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;

namespace Proveout.Fuzz;

/// <summary>
/// Posts forms to the bench. An input is the address of a page in the first line, then changes of its form, one a line: <c>name=value</c> adds or fills in,
/// <c>!name</c> leaves out, <c>*name=20000</c> fills in so many letters, <c>@name=bytes</c> sends a file, <c>?2</c> takes the third form, <c>%</c> sends
/// fields as parts, <c>&amp;rest</c> sends the rest as it is.
/// </summary>
internal static class FormTarget
{
    private const string Guard = "__RequestVerificationToken";
    private const int MostRepeated = 2_000_000;

    private static readonly ConcurrentDictionary<string, IReadOnlyList<PageForm>> Pages = new(StringComparer.Ordinal);

    public static FuzzTarget Target { get; } = new("forms", Read)
    {
        Tokens = [.. new[] { "\n!key", "\n!form", "\n*person=100000", "\n@photo=", "\n%\n", "\n?1", "\n&", "\nbuild=", "\nkey=", "\n*reading=4001", "%00", "%", "+", "<script>" }.Select(Encoding.UTF8.GetBytes)],
        MostBytes = 32 * 1024,
    };

    private static string Read(byte[] input)
    {
        var lines = Told.Text(input).Split('\n');
        var address = lines[0].Trim();
        if (!address.StartsWith('/') || address.StartsWith("//", StringComparison.Ordinal) || !Uri.TryCreate(address, UriKind.Relative, out _))
            return "no address";
        var forms = Pages.TryGetValue(address, out var known) ? known : Learn(address);
        if (forms.Count == 0)
            return "no form";
        var number = lines.LastOrDefault(line => line is ['?', .. var rest] && int.TryParse(rest, out _)) is { } which && int.TryParse(which[1..], out var told) ? Math.Abs(told % forms.Count) : 0;
        using var answer = FormHost.Running.Post(forms[number].Address is { Length: > 0 } action ? action : address, BodyOf(forms[number], lines[1..], input));
        return Outcome(answer, forms[number].Address);
    }

    private static IReadOnlyList<PageForm> Learn(string address)
    {
        using var page = FormHost.Running.Get(address);
        Outcome(page, address);
        if (page.StatusCode != HttpStatusCode.OK || page.Content.Headers.ContentType?.MediaType != "text/html")
            return [];
        return Pages[address] = PageForm.On(Task.Run(() => page.Content.ReadAsStringAsync()).GetAwaiter().GetResult());
    }

    private static string Outcome(HttpResponseMessage answer, string address)
    {
        if ((int)answer.StatusCode >= 500)
            throw new InvalidOperationException($"{(int)answer.StatusCode} at {address}.");
        var html = Task.Run(() => answer.Content.ReadAsStringAsync()).GetAwaiter().GetResult();
        return html.Contains("<script>alert", StringComparison.OrdinalIgnoreCase)
            ? throw new InvalidOperationException($"Markup came through at {address}.")
            : $"{(int)answer.StatusCode} {address.Split('/').LastOrDefault(word => word.Length < 20)} {Math.Min(html.Split("<li>").Length, 12)}";
    }

    private static HttpContent BodyOf(PageForm form, string[] lines, byte[] input)
    {
        var rest = Array.FindIndex(lines, line => line is ['&', ..]);
        var isParts = lines.Any(line => line is ['%'] or ['@', ..]);
        if (rest >= 0)
        {
            var body = new ByteArrayContent(Encoding.Latin1.GetBytes(string.Join('\n', lines[rest..])[1..]));
            body.Headers.ContentType = MediaTypeHeaderValue.Parse(isParts ? "multipart/form-data; boundary=x" : "application/x-www-form-urlencoded");
            return body;
        }

        // A key of its own for each input, or all but the first would be the same entry again.
        var key = new Guid(SHA256.HashData(input)[..16]).ToString();
        var fields = form.Fields.Select(field => field.Name == "key" ? (field.Name, Value: key) : field).ToList();
        var files = new List<(string Name, byte[] Bytes)>();
        foreach (var line in lines)
            Change(fields, files, line);
        if (!isParts)
            return new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        var parts = new MultipartFormDataContent("boundary-of-parts");
        foreach (var (name, value) in fields.Where(field => field.Name.Length > 0))
            parts.Add(new StringContent(value), Quotable(name));
        foreach (var (name, bytes) in files)
            parts.Add(new ByteArrayContent(bytes), Quotable(name), "../a <b>.csv");
        return parts;
    }

    private static void Change(List<(string Name, string Value)> fields, List<(string Name, byte[] Bytes)> files, string line)
    {
        var cut = line.IndexOf('=', StringComparison.Ordinal);
        if (line is ['!', .. var left])
            fields.RemoveAll(field => field.Name == left.Trim());
        else if (cut < 1)
            return;
        else if (line[0] == '*' && int.TryParse(line[(cut + 1)..], out var times))
            fields.Add((line[1..cut], new string('x', Math.Clamp(times, 0, MostRepeated))));
        else if (line[0] == '@')
            files.Add((line[1..cut], Encoding.Latin1.GetBytes(line[(cut + 1)..].Replace("\\n", "\n", StringComparison.Ordinal))));
        else if (fields.FindIndex(field => field.Name == line[..cut]) is >= 0 and var at && fields[at].Name != Guard)
            fields[at] = (fields[at].Name, line[(cut + 1)..]);
        else
            fields.Add((line[..cut], line[(cut + 1)..]));
    }

    // What a header cannot hold would stop at the sender.
    private static string Quotable(string name) => string.Concat(name.Select(letter => letter is >= ' ' and < (char)0x7F and not '"' ? letter : '_')) is { Length: > 0 } plain && plain.Trim().Length > 0 ? plain.Trim() : "_";
}
