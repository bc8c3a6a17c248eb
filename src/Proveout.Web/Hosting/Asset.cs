using System.Security.Cryptography;

namespace Proveout.Web.Hosting;

/// <summary>A file that travels inside the library, under an address that changes with its content.</summary>
internal sealed class Asset
{
    public static readonly Asset Stylesheet = new("proveout.css", "text/css; charset=utf-8", "tokens.css", "proveout.css");
    public static readonly Asset Script = new("proveout.js", "text/javascript; charset=utf-8");
    public static readonly Asset Tension = new("tension.js", "text/javascript; charset=utf-8");
    public static readonly Asset Edit = new("edit.js", "text/javascript; charset=utf-8");
    public static readonly Asset Recorder = new("recorder.js", "text/javascript; charset=utf-8");
    public static readonly Asset Queue = new("queue.js", "text/javascript; charset=utf-8");
    public static readonly Asset Link = new("link.js", "text/javascript; charset=utf-8");
    public static readonly Asset Hands = new("hands.js", "text/javascript; charset=utf-8");
    public static readonly Asset Stopwatch = new("stopwatch.js", "text/javascript; charset=utf-8");
    public static readonly Asset SmallIcon = new("icon-192.png", "image/png");
    public static readonly Asset LargeIcon = new("icon-512.png", "image/png");

    /// <summary>Handed out under an address of its own: a service worker rules the addresses below its own only.</summary>
    public static readonly Asset Worker = new("worker.js", "text/javascript; charset=utf-8");
    public static readonly Asset Icon = new("icon.svg", "image/svg+xml");

    public static readonly IReadOnlyList<Asset> All = [Stylesheet, Script, Tension, Edit, Recorder, Queue, Link, Hands, Stopwatch, SmallIcon, LargeIcon, Icon];

    private Asset(string name, string contentType, params string[] parts)
    {
        (Name, ContentType) = (name, contentType);
        using var copy = new MemoryStream();
        foreach (var part in parts.DefaultIfEmpty(name))
        {
            using var stream = typeof(Asset).Assembly.GetManifestResourceStream(part)
                ?? throw new InvalidOperationException($"The library lacks its file {part}.");
            stream.CopyTo(copy);
        }

        Bytes = copy.ToArray();
        Hash = Convert.ToHexStringLower(SHA256.HashData(Bytes))[..16];
    }

    public string Name { get; }

    public string ContentType { get; }

    public byte[] Bytes { get; }

    /// <summary>The first 64 bits of the content's SHA-256, hexadecimal.</summary>
    public string Hash { get; }

    public string Address => $"/assets/{Hash}/{Name}";
}
