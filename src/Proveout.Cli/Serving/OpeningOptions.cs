using System.CommandLine;
using System.CommandLine.Parsing;
using System.Net;
using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>The options of <c>proveout serve</c> that open the bench to a network.</summary>
internal sealed class OpeningOptions
{
    public Option<string?> Address { get; } = new("--address") { Description = "Address to listen on, so that others can call; then everybody has to sign in. This computer alone when left out.", HelpName = "IP" };

    public Option<string[]?> Names { get; } = new("--name") { Description = "A name that the bench may be called by, such as bench.local; may be given several times.", HelpName = "HOST" };

    public Option<string[]?> Proxies { get; } = new("--proxy") { Description = "Address of a proxy in front of the bench, whose word on callers and TLS is taken; may be given several times.", HelpName = "IP" };

    public Option<string?> Certificate { get; } = new("--certificate") { Description = "Certificate for HTTPS: a PFX file, or a PEM file together with --certificate-key.", HelpName = "FILE" };

    public Option<string?> CertificateKey { get; } = new("--certificate-key") { Description = "The private key of a PEM certificate.", HelpName = "FILE" };

    public OpeningOptions()
    {
        Address.Validators.Add(RequireAddresses);
        Proxies.Validators.Add(RequireAddresses);
        Names.Validators.Add(RequireNames);
    }

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { Address, Names, Proxies, Certificate, CertificateKey })
            command.Add(option);
    }

    /// <summary>What was asked for, or why it does not fit together.</summary>
    public Outcome<OpeningWords> Of(ParseResult parse)
    {
        var words = new OpeningWords(
            parse.GetValue(Address) is { } address ? IPAddress.Parse(address) : IPAddress.Loopback,
            parse.GetValue(Names) ?? [],
            [.. (parse.GetValue(Proxies) ?? []).Select(IPAddress.Parse)],
            parse.GetValue(Certificate),
            parse.GetValue(CertificateKey));
        if (words is { IsEverywhere: true, Names.Count: 0 })
            return Refused("no-name", "--address", "The bench would listen on every address and not know its own name, so that a foreign page could pose as it.", "Give the names that it is called by, such as --name bench.local.");
        if (words is { Certificate: null, CertificateKey: not null })
            return Refused("no-certificate", "--certificate-key", "There is a key without its certificate.", "Give the certificate with --certificate.");
        return Outcome.Of(words);
    }

    private static Outcome<OpeningWords> Refused(string rule, string about, string message, string mend) =>
        Outcome.Refused<OpeningWords>([new Diagnostic(rule, new SourcePlace(about, 0, 0), message, mend)]);

    private static void RequireAddresses(OptionResult result)
    {
        foreach (var token in result.Tokens)
            if (!IPAddress.TryParse(token.Value, out _))
                result.AddError($"`{token.Value}` is not an address. Give one such as 192.168.1.20; 0.0.0.0 means every address of this computer.");
    }

    // No wildcards: every name is said out.
    private static void RequireNames(OptionResult result)
    {
        foreach (var token in result.Tokens)
            if (Uri.CheckHostName(token.Value) is not (UriHostNameType.Dns or UriHostNameType.IPv4))
                result.AddError($"`{token.Value}` is not a name of a computer. Give one such as bench.local, without http:// and without a port.");
    }
}
