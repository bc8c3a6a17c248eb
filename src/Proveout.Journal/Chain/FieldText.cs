using System.Globalization;
using System.Text;

namespace Proveout.Journal.Chain;

/// <summary>How single fields are written: identifiers as RFC 9562 has them, times as RFC 3339 in UTC with seven decimals.</summary>
internal static class FieldText
{
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'";

    public static byte[] Write(string text) => Encoding.UTF8.GetBytes(text);

    public static byte[] Write(Guid id) => Write(id.ToString("D"));

    public static byte[] Write(long number) => Write(number.ToString(CultureInfo.InvariantCulture));

    public static byte[] Write(DateTimeOffset time) => Write(time.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture));

    public static string Read(byte[] field) => Encoding.UTF8.GetString(field);

    /// <exception cref="FormatException">Not an identifier.</exception>
    public static Guid ReadGuid(byte[] field) => Guid.ParseExact(Read(field), "D");

    /// <exception cref="FormatException">Not a time.</exception>
    public static DateTimeOffset ReadTime(byte[] field) => DateTimeOffset.ParseExact(
        Read(field), TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
