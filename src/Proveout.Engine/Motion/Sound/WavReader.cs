using System.Buffers.Binary;
using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Reads a recording from the bytes of a WAV file: integers of 8, 16, 24 or 32 bits, floating point of 32 or 64, any rate, any number of channels.</summary>
public static class WavReader
{
    /// <summary>Longest recording that is read, in seconds.</summary>
    public const double LongestSeconds = 60;

    /// <summary>Shortest recording that can hold a plucked belt, in seconds.</summary>
    public const double ShortestSeconds = 0.25;

    private const string SaveAs = "Save or convert the recording as WAV with plain (PCM) samples of 16 bits and try again.";

    // Below this rate nothing of the harmonics is left; above it the head is nonsense.
    private const double LowestRate = 2_000;
    private const double HighestRate = 1_000_000;
    private const int MostChannels = 16;

    /// <summary>Reads the bytes, or says why they cannot be used and what to do.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="name">Its name, for messages.</param>
    public static Outcome<Recording> Read(ReadOnlySpan<byte> bytes, string name)
    {
        if (bytes.IsEmpty)
            return Refuse(name, "empty-recording", "The file is empty.", "Record again; see that the recorder was stopped before the file was copied.");
        if (bytes.Length < 12 || !bytes[..4].SequenceEqual("RIFF"u8) || !bytes[8..12].SequenceEqual("WAVE"u8))
            return Refuse(name, "not-a-wav", $"This is no WAV file: it begins with {Shown(bytes)}.", SaveAs);
        WavHead? head = null;
        var place = 12;
        while (place + 8 <= bytes.Length)
        {
            var id = bytes.Slice(place, 4);
            long length = BinaryPrimitives.ReadUInt32LittleEndian(bytes[(place + 4)..]);
            var rest = bytes[(place + 8)..];
            if (id.SequenceEqual("fmt "u8))
                head = WavHead.Read(rest[..(int)Math.Min(length, rest.Length)]);
            if (id.SequenceEqual("data"u8))
                return head is null ? Headless(name) : Samples(head, rest, length, name);
            if (length > rest.Length)
                break;
            place += 8 + (int)length + (int)(length & 1);
        }

        return head is null ? Headless(name) : Refuse(name, "truncated-recording", "The file ends before its samples begin.", "Copy the file again, or record again.");
    }

    private static Outcome<Recording> Samples(WavHead head, ReadOnlySpan<byte> rest, long length, string name)
    {
        var form = new SampleForm(head.Bits, head.Tag == 3, head.Channels);
        if (!head.IsPlain)
            return Refuse(name, "compressed-recording", $"The samples are compressed (format {head.Tag}).", SaveAs);
        if (!form.IsKnown || head.Channels is < 1 or > MostChannels)
            return Refuse(name, "unknown-sample-form", $"The samples have {head.Bits} bits in {head.Channels} channels, which is not read here.", SaveAs);
        if (head.RateHertz is < (uint)LowestRate or > (uint)HighestRate)
            return Refuse(name, "unusable-rate", $"The file says {head.RateHertz} samples a second.", "Record with 44100 or 48000 samples a second.");
        // A recorder that was cut off, or that writes as it goes, leaves 0 or all ones for the length.
        var isOpenEnded = length is 0 or uint.MaxValue;
        if (!isOpenEnded && length > rest.Length)
            return Refuse(name, "truncated-recording", Seconds($"The file holds {rest.Length / (double)form.FrameBytes / head.RateHertz:0.##} s of the {length / (double)form.FrameBytes / head.RateHertz:0.##} s that its head promises."), "Copy the file again, or record again.");
        return Decoded(form, head.RateHertz, isOpenEnded ? rest : rest[..(int)length], isOpenEnded, name);
    }

    private static Outcome<Recording> Decoded(SampleForm form, double rate, ReadOnlySpan<byte> data, bool isOpenEnded, string name)
    {
        var seconds = data.Length / form.FrameBytes / rate;
        if (seconds < ShortestSeconds)
            return Refuse(name, "short-recording", Seconds($"The recording lasts {seconds:0.###} s."), "Start recording, wait half a second, pluck, and let it ring for a second.");
        if (seconds > LongestSeconds)
            return Refuse(name, "long-recording", Seconds($"The recording lasts {seconds:0} s; at most {LongestSeconds:0} s are read."), "Cut it to the plucks of one span.");
        var channels = WavSamples.Decode(data, form);
        if (channels is null)
            return Refuse(name, "no-numbers", "Some samples are not numbers.", "Record again, or save with integer samples of 16 bits.");
        var mixed = WavSamples.Mix(channels);
        if (Silence.IsIn(mixed, form))
            return Refuse(name, "silent-recording", "The recording is silent.", "See that the right microphone is chosen and not muted, hold it within 10 cm of the span, and pluck again.");
        var clipped = channels.Max(channel => Clipping.WorstShare(channel, rate, form));
        if (clipped > Clipping.TooMuch)
            return Refuse(name, "clipped-recording", Seconds($"The recording is clipped: {100 * clipped:0} % of its loudest tenth of a second stand at the end of the scale."), "Lower the microphone's level or hold it further away, and pluck again.");
        List<string> notes = [];
        if (isOpenEnded)
            notes.Add("The head does not say how long the recording is; all that follows was read.");
        if (clipped > 0)
            notes.Add("The loudest part is slightly clipped; the pitch can still be read.");
        return Outcome.Of(new Recording(name, mixed, rate, form, notes));
    }

    private static Outcome<Recording> Headless(string name) =>
        Refuse(name, "no-format", "The file does not say how its samples are stored before they begin.", SaveAs);

    private static Outcome<Recording> Refuse(string name, string rule, string message, string mend) =>
        Outcome.Refused<Recording>([new Diagnostic(rule, new SourcePlace(name, 0, 0), message, mend)]);

    private static string Seconds(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Shown(ReadOnlySpan<byte> bytes)
    {
        var shown = "";
        foreach (var value in bytes[..Math.Min(4, bytes.Length)])
            shown += value is >= 32 and < 127 ? ((char)value).ToString() : "·";
        return $"`{shown}`";
    }
}
