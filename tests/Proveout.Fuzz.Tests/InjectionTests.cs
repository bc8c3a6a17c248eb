using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Proveout.Fuzz.Tests;

/// <summary>A machine whose free texts are markup, formulas, paths and marks that turn text round, followed through everything that the bench hands out.</summary>
public sealed partial class InjectionTests
{
    private const int MostAddresses = 400;

    private static readonly string[] Hostile =
    [
        "=HYPERLINK(\"x\")<script>alert(1)</script>", "+1<svg onload=alert(2)>", "-2+3\"><img src=x onerror=alert(3)>", "@SUM(1)'><b>", "]]><script>alert(4)</script>", ") Tj /JS (app.alert(5)) <script>alert(5)</script>",
        "../../../etc/passwd<script>alert(6)", "CON", "trailing...", "{{7*7}}<script>alert(8)</script>", "<!--<script>alert(9)</script>",
    ];

    [Fact]
    public async Task No_text_of_a_machine_file_comes_out_as_markup_formula_or_path()
    {
        var folder = Directory.CreateTempSubdirectory("proveout-hostile-");
        try
        {
            var machine = Directory.CreateDirectory(Path.Combine(folder.FullName, "hostile")).FullName;
            var count = 0;
            foreach (var file in Directory.EnumerateFiles(Path.Combine(Corpus.Root, "samples", "pennywort"), "*.yaml"))
                await File.WriteAllTextAsync(Path.Combine(machine, Path.GetFileName(file)), FreeText().Replace(await File.ReadAllTextAsync(file), found => $"{found.Groups[1].Value}'{Hostile[count++ % Hostile.Length].Replace("'", "''", StringComparison.Ordinal)}'"));
            Assert.True(count > 10, $"Only {count} texts were made hostile.");
            var breaches = Walk(await FormHost.StartAsync(machine, Hostile[0]), out var read);

            Assert.True(read > 60, $"Only {read} addresses were read.");
            Assert.Empty(breaches.Distinct());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static List<string> Walk(FormHost host, out int read)
    {
        var (breaches, seen) = (new List<string>(), new HashSet<string>(StringComparer.Ordinal) { "/", "/machines/hostile/plan", "/build/record" });
        var ahead = new Queue<string>(seen);
        var shown = 0;
        for (read = 0; ahead.TryDequeue(out var address) && read < MostAddresses; read++)
        {
            using var answer = host.Get(address);
            if ((int)answer.StatusCode >= 500)
                breaches.Add($"{(int)answer.StatusCode} at {address}");
            var bytes = answer.Content.ReadAsByteArrayAsync().Result;
            shown += Encoding.UTF8.GetString(bytes).Contains("&lt;script&gt;alert", StringComparison.Ordinal) ? 1 : 0;
            breaches.AddRange(Breaches(answer.Content.Headers.ContentType?.MediaType ?? "", bytes, address));
            if (answer.Content.Headers.ContentType?.MediaType == "text/html")
                foreach (Match link in Link().Matches(Encoding.UTF8.GetString(bytes)))
                    if (WebUtility.HtmlDecode(link.Groups[1].Value).Split('#')[0] is ['/', ..] next && !next.Contains("/events", StringComparison.Ordinal) && seen.Add(next))
                        ahead.Enqueue(next);
        }

        if (shown == 0)
            breaches.Add("No page shows the hostile texts at all.");
        return breaches;
    }

    private static IEnumerable<string> Breaches(string type, byte[] bytes, string address)
    {
        if (type == "application/zip")
        {
            using var zip = new ZipArchive(new MemoryStream(bytes));
            foreach (var entry in zip.Entries)
            {
                if (!Member().IsMatch(entry.FullName))
                    yield return $"{address} holds `{entry.FullName}`";
                using var content = new MemoryStream();
                using (var from = entry.Open())
                    from.CopyTo(content);
                foreach (var breach in Breaches(TypeOf(entry.FullName), content.ToArray(), $"{address} {entry.FullName}"))
                    yield return breach;
            }
        }

        var text = Encoding.UTF8.GetString(bytes);
        if (type is "text/html" or "image/svg+xml" && Raw().Match(text) is { Success: true } raw)
            yield return $"`{raw.Value}` at {address}";
        if (type is "image/svg+xml" or "text/csv" && text.Any(letter => letter is '\u202E' or '\u001b'))
            yield return $"a mark that turns text at {address}";
        if (type == "application/pdf" && PdfAction().Match(Encoding.Latin1.GetString(bytes)) is { Success: true } action)
            yield return $"`{action.Value}` at {address}";
        if (type == "text/csv")
            foreach (var cell in text.Split(',', '\n').Select(cell => cell.Trim('"', '\r')).Where(cell => Formula().IsMatch(cell)))
                yield return $"the cell `{cell}` at {address}";
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".html" => "text/html",
        ".svg" => "image/svg+xml",
        ".csv" => "text/csv",
        ".pdf" => "application/pdf",
        _ => "",
    };

    [GeneratedRegex(@"(\b(?:name|summary|note): *)([^\s,{}'"">|][^,{}\n]*|""[^""\n]*"")")]
    private static partial Regex FreeText();

    [GeneratedRegex("(?:href|src)=\"([^\"]+)\"")]
    private static partial Regex Link();

    [GeneratedRegex(@"<script>alert|<svg onload|<img src=x|'><b>", RegexOptions.IgnoreCase)]
    private static partial Regex Raw();

    // What a reader of PDF would do by itself, or a text that has left its brackets (ISO 32000-1 clauses 7.3.4.2 and 12.6.4).
    [GeneratedRegex(@"(?<!\\)\) Tj /JS \(|/JavaScript|/OpenAction|/Launch|/SubmitForm|/URI \(")]
    private static partial Regex PdfAction();

    [GeneratedRegex(@"^[=+@]|^-[^\d\s]|^-\d[^\d.]*\+")]
    private static partial Regex Formula();

    [GeneratedRegex(@"^(?!.*\.\.)[A-Za-z0-9][A-Za-z0-9._/-]*$")]
    private static partial Regex Member();
}
