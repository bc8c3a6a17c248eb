using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Reads the certificate that the bench shows.</summary>
internal static class CertificateFile
{
    /// <summary>The certificate with its key, or why there is none. The password of a PFX file is asked for, never given as a word of the command.</summary>
    public static async Task<Outcome<X509Certificate2>> ReadAsync(Terminal terminal, string file, string? keyFile, CancellationToken cancellation)
    {
        try
        {
            var certificate = keyFile is not null ? OfPem(file, keyFile) : await OfPfxAsync(terminal, file, cancellation);
            if (certificate.HasPrivateKey)
                return Outcome.Of(certificate);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or CryptographicException)
        {
            // Said below: the file is not what it has to be, or the password does not open it.
        }

        return Outcome.Refused<X509Certificate2>(
        [
            new Diagnostic("no-certificate", new SourcePlace(file, 0, 0), "This is no certificate with its private key, or it cannot be read.", "Give a PFX file and its password, or a PEM file and its key with --certificate-key."),
        ]);
    }

    // Through PKCS #12, because a key that is in memory only does not serve TLS on every system.
    private static X509Certificate2 OfPem(string file, string keyFile)
    {
        using var certificate = X509Certificate2.CreateFromPemFile(file, keyFile);
        return X509CertificateLoader.LoadPkcs12(certificate.Export(X509ContentType.Pkcs12), null);
    }

    private static async Task<X509Certificate2> OfPfxAsync(Terminal terminal, string file, CancellationToken cancellation)
    {
        try
        {
            return X509CertificateLoader.LoadPkcs12FromFile(file, null);
        }
        catch (CryptographicException)
        {
            return X509CertificateLoader.LoadPkcs12FromFile(file, await terminal.AskSecretAsync($"Password of {file}: ", cancellation));
        }
    }
}
