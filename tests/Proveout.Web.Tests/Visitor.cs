using System.Net;

namespace Proveout.Web.Tests;

/// <summary>Reads pages and sends their forms as a browser without scripts does.</summary>
internal sealed class Visitor : IDisposable
{
    private readonly HttpClientHandler _handler = new() { AllowAutoRedirect = false, CookieContainer = new CookieContainer() };
    private readonly HttpClient _client;

    public Visitor(Uri address) => _client = new HttpClient(_handler) { BaseAddress = address };

    public HttpClient Client => _client;

    public CookieCollection Cookies => _handler.CookieContainer.GetAllCookies();

    public async Task<Page> GetAsync(string address) => await Page.ReadAsync(await _client.GetAsync(address));

    public Task<byte[]> BytesAsync(string address) => _client.GetByteArrayAsync(new Uri(address, UriKind.Relative));

    /// <summary>Sends the form of that name on a page, with its hidden fields.</summary>
    public async Task<Page> SendAsync(string address, string form, params (string Field, string Text)[] typed) =>
        await PostAsync(address, Fill((await GetAsync(address)).HiddenFields(form), typed));

    /// <summary>Sends the form of the signature on a record, which has an address of its own.</summary>
    public async Task<Page> SignOffAsync(string record, params (string Field, string Text)[] typed) =>
        await PostAsync($"{record}/sign-off", Fill((await GetAsync(record)).HiddenFields("sign-off"), typed));

    public async Task<Page> PostAsync(string address, IEnumerable<KeyValuePair<string, string>> fields) =>
        await Page.ReadAsync(await _client.PostAsync(address, new FormUrlEncodedContent(fields)));

    public async Task<Page> SendPhotoAsync(string address, byte[] bytes, string contentType, string caption)
    {
        using var content = new MultipartFormDataContent();
        foreach (var (field, text) in (await GetAsync(address)).HiddenFields("photo"))
            content.Add(new StringContent(text), field);
        content.Add(new StringContent(caption), "caption");
        var photo = new ByteArrayContent(bytes);
        photo.Headers.ContentType = new(contentType);
        content.Add(photo, "photo", "bond.png");
        return await Page.ReadAsync(await _client.PostAsync(address, content));
    }

    public static Dictionary<string, string> Fill(Dictionary<string, string> fields, params (string Field, string Text)[] typed)
    {
        foreach (var (field, text) in typed)
            fields[field] = text;
        return fields;
    }

    public void Dispose() => _client.Dispose();
}
