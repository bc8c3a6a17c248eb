using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Finds the fundamental of a plucked span in a recording, or says that it cannot tell.</summary>
public static class PitchFinder
{
    /// <summary>Below this nothing is claimed.</summary>
    public const double LeastConfidence = 0.5;

    // Plucks of one span agree within this share.
    private const double SameNote = 0.02;

    private const string Again = "Pluck again near the middle of the span, gently, with the microphone within 10 cm of it, and let it ring for a second while nobody speaks.";

    /// <summary>The fundamental, or why none is claimed.</summary>
    /// <param name="recording">The recording.</param>
    /// <param name="range">Where to look; the range of belts when left out.</param>
    public static Outcome<PluckedPitch> Find(Recording recording, PitchRange? range = null)
    {
        ArgumentNullException.ThrowIfNull(recording);
        var band = SoundBand.Of(recording);
        var plucks = Plucks.In(band);
        if (plucks.Count == 0)
            return Refuse(recording, "no-pluck", "Nothing in the recording rises quickly and then dies away, as a plucked span does.", Again);
        var heard = plucks.Select(pluck => (pluck.Energy, Pitch: PluckAnalysis.Of(band, pluck, range ?? PitchRange.Belts))).ToArray();
        // A quieter sound is no answer when the loudest stroke gives none: it may be a voice.
        var loudest = heard.MaxBy(item => item.Energy).Pitch;
        if (loudest is null || loudest.Confidence < LeastConfidence)
            return Unsure(recording, loudest);
        PluckedPitch[] sure = [.. heard.Select(item => item.Pitch).OfType<PluckedPitch>().Where(pitch => pitch.Confidence >= LeastConfidence)];
        PluckedPitch[] agreeing = [.. sure.Where(pitch => Math.Abs(pitch.FundamentalHertz - loudest.FundamentalHertz) < SameNote * loudest.FundamentalHertz)];
        return sure.Length > agreeing.Length
            ? Refuse(recording, "several-notes", Text($"Several notes are heard: {string.Join(", ", Notes(sure))} Hz."), "Record one span at a time, and damp the others with a finger.")
            : Outcome.Of(Agreement.Of(agreeing.MinBy(pitch => pitch.StandardHertz / pitch.FundamentalHertz)!, agreeing));
    }

    private static Outcome<PluckedPitch> Unsure(Recording recording, PluckedPitch? nearest) => nearest is null
        ? Refuse(recording, "no-tone", "No tone stands out of the noise after the stroke.", Again)
        : Refuse(
            recording,
            "cannot-tell",
            Text($"It cannot be told what the span sounds; {nearest.FundamentalHertz:0} Hz is the nearest guess and is not good enough. {string.Join(' ', nearest.Doubts)}").TrimEnd(),
            Again);

    private static IEnumerable<string> Notes(IEnumerable<PluckedPitch> pitches) =>
        pitches.Select(pitch => pitch.FundamentalHertz.ToString("0.0", CultureInfo.InvariantCulture)).Distinct();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static Outcome<PluckedPitch> Refuse(Recording recording, string rule, string message, string mend) =>
        Outcome.Refused<PluckedPitch>([new Diagnostic(rule, new SourcePlace(recording.Name, 0, 0), message, mend)]);
}
