using System.Security.Cryptography;
using Proveout.Journal.Chain;

namespace Proveout.Journal;

/// <summary>The private key that seals are signed with: ECDSA over the curve P-256 (FIPS 186-5).</summary>
public sealed class SealKey : IDisposable
{
    private const string Curve = "1.2.840.10045.3.1.7"; // P-256, RFC 5480, 2.1.1.1
    private readonly ECDsa _key;

    private SealKey(ECDsa key) => _key = key;

    /// <summary>The public key, SubjectPublicKeyInfo in base64; not secret.</summary>
    public string PublicKey => Convert.ToBase64String(_key.ExportSubjectPublicKeyInfo());

    /// <summary>A new key.</summary>
    public static SealKey Make() => new(ECDsa.Create(ECCurve.NamedCurves.nistP256));

    /// <summary>A key from its PEM text (PKCS #8, RFC 5958); null when the text is no private key over P-256.</summary>
    public static SealKey? FromPem(string pem) => Read(pem) is { } key && HasPrivateHalf(key) ? new SealKey(key) : null;

    /// <summary>The public key of a PEM text that holds either half; null when it holds no key over P-256.</summary>
    public static string? PublicKeyOf(string pem)
    {
        using var key = Read(pem);
        return key is null ? null : Convert.ToBase64String(key.ExportSubjectPublicKeyInfo());
    }

    /// <summary>The private key as PEM text; whoever has it can sign.</summary>
    public string ToPem() => _key.ExportPkcs8PrivateKeyPem() + "\n";

    /// <summary>The public key as PEM text, to be given away.</summary>
    public string ToPublicPem() => _key.ExportSubjectPublicKeyInfoPem() + "\n";

    /// <inheritdoc/>
    public void Dispose() => _key.Dispose();

    internal Seal Sign(Guid build, int entries, string hash, DateTimeOffset when, string person)
    {
        var unsigned = new Seal(build, entries, hash, when, person, PublicKey, "");
        var signature = _key.SignData(Statement(unsigned), HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        return unsigned with { Signature = Convert.ToBase64String(signature) };
    }

    /// <summary>Whether the signature was made over these fields by the key that the seal names.</summary>
    internal static bool Signed(Seal seal)
    {
        try
        {
            using var key = ECDsa.Create();
            key.ImportSubjectPublicKeyInfo(Convert.FromBase64String(seal.PublicKey), out _);
            return IsOnCurve(key)
                && key.VerifyData(Statement(seal), Convert.FromBase64String(seal.Signature), HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        }
        catch (Exception cause) when (cause is FormatException or CryptographicException)
        {
            return false;
        }
    }

    /// <summary>What is signed: the fields as netstrings, as docs/methods/journal-chain.md describes.</summary>
    internal static byte[] Statement(Seal seal) => CanonicalForm.Bytes(
        "proveout-seal 1"u8, FieldText.Write(seal.BuildId), FieldText.Write(seal.Entries), FieldText.Write(seal.Hash),
        FieldText.Write(seal.Sealed), FieldText.Write(seal.Person));

    private static ECDsa? Read(string pem)
    {
        var key = ECDsa.Create();
        try
        {
            key.ImportFromPem(pem);
            if (IsOnCurve(key))
                return key;
        }
        catch (Exception cause) when (cause is ArgumentException or CryptographicException or PlatformNotSupportedException)
        {
            // Not a key, or one on a curve that this platform does not know: said by returning none.
        }
        key.Dispose();
        return null;
    }

    // Some platforms name a curve by its number, some by a word.
    private static bool IsOnCurve(ECDsa key) =>
        key.KeySize == 256 && key.ExportParameters(includePrivateParameters: false).Curve.Oid is { } oid && (oid.Value == Curve || oid.FriendlyName is "nistP256" or "ECDSA_P256");

    private static bool HasPrivateHalf(ECDsa key)
    {
        try
        {
            return key.ExportParameters(includePrivateParameters: true).D is not null;
        }
        catch (CryptographicException)
        {
            return false;
        }
    }
}
