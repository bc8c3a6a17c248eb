using System.Security.Cryptography;
using System.Text;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The key that a person's authenticator and the bench share.</summary>
/// <param name="Text">In base 32 (RFC 4648, 6), without padding, as authenticators take it.</param>
public sealed record OneTimeKey(string Text)
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private const int LetterBits = 5;
    private const int ByteBits = 8;
    private const int GroupLength = 4;

    // 160 bits are recommended (RFC 4226, 4, R6).
    private const int KeyBytes = 20;

    /// <summary>A key from the system's cryptographic generator.</summary>
    public static OneTimeKey New() => Of(RandomNumberGenerator.GetBytes(KeyBytes));

    /// <summary>The key of these bytes.</summary>
    public static OneTimeKey Of(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder();
        var (held, bits) = (0, 0);
        foreach (var one in bytes)
            for ((held, bits) = ((held << ByteBits) | one, bits + ByteBits); bits >= LetterBits; bits -= LetterBits)
                text.Append(Letters[(held >> (bits - LetterBits)) & 0x1f]);
        if (bits > 0)
            text.Append(Letters[(held << (LetterBits - bits)) & 0x1f]);
        return new OneTimeKey(text.ToString());
    }

    /// <summary>The bytes of the key.</summary>
    public byte[] Bytes()
    {
        var bytes = new List<byte>();
        var (held, bits) = (0, 0);
        foreach (var letter in Text)
        {
            (held, bits) = ((held << LetterBits) | Math.Max(0, Letters.IndexOf(letter, StringComparison.Ordinal)), bits + LetterBits);
            if (bits < ByteBits)
                continue;
            bytes.Add((byte)(held >> (bits - ByteBits)));
            bits -= ByteBits;
        }

        return [.. bytes];
    }

    /// <summary>The key in groups of four letters, to be typed.</summary>
    public string Grouped => string.Join(' ', Text.Chunk(GroupLength).Select(group => new string(group)));

    /// <summary>The address by which an authenticator takes the key.</summary>
    /// <param name="bench">The bench's name, so that codes of two benches are told apart.</param>
    /// <param name="person">Whose codes these are.</param>
    public string AddressFor(string bench, string person)
    {
        // A colon parts the two.
        var issuer = Uri.EscapeDataString($"Proveout {bench.Replace(':', ' ')}".Trim());
        return $"otpauth://totp/{issuer}:{Uri.EscapeDataString(person.Replace(':', ' '))}?secret={Text}&issuer={issuer}&algorithm=SHA1&digits={OneTimeCodes.Digits}&period={(int)OneTimeCodes.Step.TotalSeconds}";
    }

    /// <summary>The square code of that address, row by row from the top; true is dark.</summary>
    public static IReadOnlyList<IReadOnlyList<bool>> SquareOf(string address) => SquareCode.Of(address);

    /// <summary>No key: it stays out of logs and messages.</summary>
    public override string ToString() => "kept secret";
}
