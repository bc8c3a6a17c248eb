using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

/// <summary>TLS, proxies, host names and headers of a bench that others may call.</summary>
public sealed class NetworkTests
{
    private const string Ida = "Ida Brandt";

    [Fact]
    public async Task With_a_certificate_cookies_go_over_TLS_only_and_the_browser_is_told_to_stay_with_it()
    {
        using var certificate = OwnCertificate();
        await using var bench = await Builder(opening => opening with { Certificate = certificate });
        using var handler = new HttpClientHandler { AllowAutoRedirect = false, ServerCertificateCustomValidationCallback = (_, _, _, _) => true };
        using var client = new HttpClient(handler) { BaseAddress = bench.Address };
        var form = await Page.ReadAsync(await client.GetAsync("/sign-in"));
        var fields = Visitor.Fill(form.HiddenFields("sign-in"), ("name", Ida), ("password", OpenedBench.Password));
        using var content = new FormUrlEncodedContent(fields);
        var page = await Page.ReadAsync(await client.PostAsync("/sign-in", content));

        Assert.Equal("https", bench.Address.Scheme);
        Assert.Contains("__Host-form=", form.Header("Set-Cookie"), StringComparison.Ordinal);
        Assert.Matches("__Host-session=[0-9a-f]{64};.*path=/; secure; samesite=strict; httponly", page.Header("Set-Cookie"));
        Assert.Equal("max-age=31536000", page.Header("Strict-Transport-Security"));
    }

    [Fact]
    public async Task A_named_proxy_is_believed_on_TLS_and_the_caller()
    {
        await using var bench = await Builder(opening => opening with { Proxies = [IPAddress.Loopback] });
        var page = await SignInThroughProxyAsync(bench);
        Assert.Contains("__Host-session=", page.Header("Set-Cookie"), StringComparison.Ordinal);
        Assert.Contains("at 192.0.2.44", Assert.Single(bench.Store.Read().Sessions).Device, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_named_proxy_is_not_believed()
    {
        await using var bench = await Builder(opening => opening with { Proxies = [IPAddress.Parse("192.0.2.1")] });
        var page = await SignInThroughProxyAsync(bench);
        Assert.DoesNotContain("__Host-session=", page.Header("Set-Cookie"), StringComparison.Ordinal);
        Assert.Contains("at 127.0.0.1", Assert.Single(bench.Store.Read().Sessions).Device, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bench.example", HttpStatusCode.OK)]
    [InlineData("localhost", HttpStatusCode.OK)]
    [InlineData("elsewhere.example", HttpStatusCode.BadRequest)]
    [InlineData("bench.example.elsewhere.example", HttpStatusCode.BadRequest)]
    public async Task Only_the_names_of_the_bench_are_answered_to(string host, HttpStatusCode status)
    {
        await using var bench = await Builder(null);
        using var visitor = bench.Visit();
        visitor.Client.DefaultRequestHeaders.Host = host;
        Assert.Equal(status, (await visitor.GetAsync("/sign-in")).Status);
    }

    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/join")]
    [InlineData("/nothing/here")]
    [InlineData("/")]
    public async Task Every_answer_carries_every_header_of_protection(string address)
    {
        await using var bench = await Builder(null);
        using var visitor = bench.Visit();
        var page = await visitor.GetAsync(address);
        Assert.Contains("default-src 'none'", page.Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", page.Header("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Equal("nosniff", page.Header("X-Content-Type-Options"));
        Assert.Equal("same-origin", page.Header("Referrer-Policy"));
        Assert.Equal("same-origin", page.Header("Cross-Origin-Opener-Policy"));
        Assert.Equal("same-origin", page.Header("Cross-Origin-Resource-Policy"));
        Assert.Contains("camera=()", page.Header("Permissions-Policy"), StringComparison.Ordinal);
        Assert.Contains("private", page.Header("Cache-Control"), StringComparison.Ordinal);
        Assert.Equal("", page.Header("Access-Control-Allow-Origin"));
        Assert.Equal("", page.Header("Server"));
    }

    [Fact]
    public async Task A_page_that_listens_is_let_go_when_the_person_is_removed()
    {
        await using var bench = await Builder(null);
        using var visitor = await bench.VisitAsync(Ida);
        var last = (await bench.Bench.StateAsync(bench.Build.Id, default))!.LastSequence;
        await using var stream = await visitor.Client.GetStreamAsync($"/builds/{bench.Build.Id}/events?after={last}");
        using var reader = new StreamReader(stream);
        Assert.Contains("watching", await reader.ReadLineAsync() ?? "", StringComparison.Ordinal);
        bench.People.Remove(Ida);
        await bench.Bench.NoteDeviationAsync(bench.Build.Id, new DeviationRequest("", "A longer lead is fitted.", "Mara Lindt", Guid.NewGuid()), default);
        Assert.DoesNotContain("entered", await reader.ReadToEndAsync().WaitAsync(TimeSpan.FromSeconds(30)), StringComparison.Ordinal);
    }

    private static async Task<Page> SignInThroughProxyAsync(OpenedBench bench)
    {
        using var visitor = bench.Visit();
        visitor.Client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        visitor.Client.DefaultRequestHeaders.Add("X-Forwarded-For", "192.0.2.44");
        var form = await visitor.GetAsync("/sign-in");
        // What a browser does over TLS: the cookie of the form comes back although the proxy's own leg is plain.
        visitor.Client.DefaultRequestHeaders.Add("Cookie", form.Header("Set-Cookie").Split(';')[0]);
        var page = await visitor.PostAsync("/sign-in", Visitor.Fill(form.HiddenFields("sign-in"), ("name", Ida), ("password", OpenedBench.Password)));
        Assert.Equal(HttpStatusCode.SeeOther, page.Status);
        return page;
    }

    private static async Task<OpenedBench> Builder(Func<NetworkOpening, NetworkOpening>? with)
    {
        var bench = await OpenedBench.StartAsync(with);
        bench.Add(Ida, AccessRole.Builder);
        return bench;
    }

    private static X509Certificate2 OwnCertificate()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=bench.example", key, HashAlgorithmName.SHA256);
        using var certificate = request.CreateSelfSigned(TimeProvider.System.GetUtcNow().AddDays(-1), TimeProvider.System.GetUtcNow().AddDays(1));
        return X509CertificateLoader.LoadPkcs12(certificate.Export(X509ContentType.Pkcs12), null);
    }
}
