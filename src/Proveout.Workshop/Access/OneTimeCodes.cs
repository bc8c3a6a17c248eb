using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Security.Cryptography;

namespace Proveout.Workshop;

/// <summary>One-time codes by time: RFC 6238 over the codes of RFC 4226, with HMAC-SHA-1, steps of 30 seconds and six digits, which every authenticator understands.</summary>
/// <remarks>That SHA-1 is broken where two texts with one sum are sought says nothing against HMAC-SHA-1 with a secret key (RFC 6151 on the same question for HMAC; RFC 4226, appendix A).</remarks>
public static class OneTimeCodes
{
    /// <summary>Length of a step (RFC 6238, 5.2: 30 seconds are recommended).</summary>
    public static readonly TimeSpan Step = TimeSpan.FromSeconds(30);

    /// <summary>Digits of a code.</summary>
    public const int Digits = 6;

    // One step of delay and of a clock that is off, either way (RFC 6238, 5.2 and 6).
    private const int Window = 1;

    /// <summary>The step that a time is in, counted from the beginning of 1970 (RFC 6238, 4.2).</summary>
    public static long StepOf(DateTimeOffset time) => (long)Math.Floor((time - DateTimeOffset.UnixEpoch) / Step);

    /// <summary>The code of a counter (RFC 4226, 5.3).</summary>
    /// <param name="key">The shared key.</param>
    /// <param name="counter">The counter; the step, for codes by time.</param>
    /// <param name="digits">How many digits it has, 6 to 8.</param>
    [SuppressMessage("Security", "CA5350", Justification = "RFC 4226 fixes HMAC-SHA-1, and authenticators know nothing else; what is broken of SHA-1 is not what HMAC rests on.")]
    public static string Of(ReadOnlySpan<byte> key, long counter, int digits = Digits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(digits, 6);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(digits, 8);
        Span<byte> message = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64BigEndian(message, counter);
        Span<byte> sum = stackalloc byte[HMACSHA1.HashSizeInBytes];
        HMACSHA1.HashData(key, message, sum);
        // The dynamic truncation: the low four bits of the last byte say where the 31 bits of the code begin.
        var number = BinaryPrimitives.ReadUInt32BigEndian(sum[(sum[^1] & 0xf)..]) & 0x7fff_ffff;
        return (number % (uint)Math.Pow(10, digits)).ToString("D" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    /// <summary>The step whose code was typed; null when it is none of now, or one that was taken already.</summary>
    /// <param name="key">The shared key.</param>
    /// <param name="typed">As typed; blanks in it do not matter.</param>
    /// <param name="now">The time.</param>
    /// <param name="after">The last step whose code was taken; no code of it or of one before is taken again (RFC 6238, 5.2).</param>
    public static long? FittingStep(ReadOnlySpan<byte> key, string typed, DateTimeOffset now, long after)
    {
        var code = string.Concat(typed.Where(letter => !char.IsWhiteSpace(letter)).Take(Digits + 1));
        if (code.Length != Digits || !code.All(char.IsAsciiDigit))
            return null;
        long? fitting = null;
        var middle = StepOf(now);
        for (var step = middle - Window; step <= middle + Window; step++)
            if (Secrets.Equal(Of(key, step), code) && step > after)
                fitting = step;
        return fitting;
    }
}
