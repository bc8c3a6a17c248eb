using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Proveout.Publish.Report;

/// <summary>
/// Makes equal reports equal files. The library draws its identifiers at random; here they are replaced, length for length, by ones that
/// follow from the content, as ISO 32000-1, 14.4 suggests for the file identifier.
/// </summary>
internal static partial class PdfIdentity
{
    /// <summary>The file with identifiers that follow from its content.</summary>
    public static byte[] FromContent(byte[] file)
    {
        var text = Encoding.Latin1.GetString(file);
        var bare = FileIdentifier().Replace(Metadata().Replace(SubsetTag().Replace(text, "AAAAAA"), new string('0', 36)), new string('0', 32));
        var digest = SHA256.HashData(Encoding.Latin1.GetBytes(bare));
        var identifier = Convert.ToHexString(digest)[..32];
        text = SubsetTag().Replace(text, match => Letters(digest, text[(match.Index + 7)..(match.Index + 40)]));
        text = Metadata().Replace(text, new Guid(digest.AsSpan(0, 16)).ToString());
        return Encoding.Latin1.GetBytes(FileIdentifier().Replace(text, identifier));
    }

    /// <summary>Six letters for a font's subset, ISO 32000-1, 9.6.4; regular and bold differ.</summary>
    private static string Letters(byte[] digest, string fontName)
    {
        var weight = fontName.Contains(",Bold", StringComparison.Ordinal) ? 1 : 0;
        return string.Concat(digest.Skip(weight * 6).Take(6).Select(value => (char)('A' + (value % 26))));
    }

    [GeneratedRegex("(?<=/)[A-Z]{6}(?=\\+DejaVu#20Sans)")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("(?<=ID>uuid:)[0-9a-f-]{36}(?=</xmpMM:)")]
    private static partial Regex Metadata();

    [GeneratedRegex("(?<=/ID\\[<|(?<=/ID\\[<[0-9A-F]{32}>)<)[0-9A-F]{32}(?=>)")]
    private static partial Regex FileIdentifier();
}
