using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>Guards forms against other pages: with keys of the process, or with those that all servers of a journal share.</summary>
internal static class FormGuard
{
    // Keys and cookies of another application on the same computer are none of ours.
    private const string Application = "proveout";

    // The framework's own figure: a new key is made and known to all servers before one ends.
    private static readonly TimeSpan KeyLife = TimeSpan.FromDays(90);

    public static void Add(IServiceCollection services, FormKeys? keys)
    {
        if (keys is null)
            // Keys live as long as the process: a form from before a restart comes back filled in and is sent again.
            services.AddSingleton<IDataProtectionProvider, EphemeralDataProtectionProvider>();
        else
            services.AddDataProtection().SetApplicationName(Application).SetDefaultKeyLifetime(KeyLife)
                .AddKeyManagementOptions(options => options.XmlRepository = new KeysInJournal(keys));
        services.AddAntiforgery(guard =>
        {
            guard.SuppressXFrameOptionsHeader = true;
            guard.Cookie.Name = "form";
            guard.Cookie.SameSite = SameSiteMode.Strict;
            guard.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
    }

    /// <summary>Makes the first key, once for all servers: two that each made their own would not know the other's for a day.</summary>
    public static void MakeFirstKey(IServiceProvider services, FormKeys? keys) => keys?.Alone(() =>
    {
        var manager = services.GetRequiredService<IKeyManager>();
        if (manager.GetAllKeys().Count > 0)
            return;
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        manager.CreateNewKey(now, now + KeyLife);
    });

    /// <summary>Keys as the framework hands them over, each an element.</summary>
    private sealed class KeysInJournal(FormKeys keys) : IXmlRepository
    {
        public IReadOnlyCollection<XElement> GetAllElements() => [.. keys.Read().Select(text => XElement.Parse(text))];

        public void StoreElement(XElement element, string friendlyName) => keys.Add(friendlyName, element.ToString(SaveOptions.DisableFormatting));
    }
}
