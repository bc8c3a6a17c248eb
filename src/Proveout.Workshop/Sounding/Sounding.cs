using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Learns the tension of one belt, or of a pair, from sound or from notes.</summary>
public static class Sounding
{
    /// <summary>What follows from what was brought, or everything that is wrong with it.</summary>
    public static Outcome<SoundingView> Of(SoundingRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var figures = SoundingFigures.Read(new TypedFigures(request.Typed));
        List<Diagnostic> problems = [.. figures.Problems];
        if (request.Recordings.Count > 2)
            problems.Add(new Diagnostic("too-many-recordings", new SourcePlace("recordings", 0, 0), "More than two recordings were given.", "Give one of a single span, or one of each belt of a pair."));
        HeardNote?[] heard = [.. request.Recordings.Take(2).Select(file => Hear(file, problems))];
        var first = heard.FirstOrDefault() ?? Typed(figures.Left, figures.FrequencyError);
        var second = heard.ElementAtOrDefault(1) ?? Typed(figures.Right, figures.FrequencyError);
        if (problems.Count == 0 && first is null)
            problems.Add(new Diagnostic("no-note", new SourcePlace(SoundingFields.Frequency.Label, 0, 0), "There is neither a recording nor a note.", "Give a WAV file, or type the note in Hz."));
        return problems.Count > 0 ? Outcome.Refused<SoundingView>(problems) : Outcome.Of(SoundingViews.Of(figures, first!, second));
    }

    private static HeardNote? Hear(SoundFile file, List<Diagnostic> problems)
    {
        if (file.Bytes.Length > SoundFile.MostBytes)
        {
            problems.Add(new Diagnostic("large-recording", new SourcePlace(file.Name, 0, 0), "The file is larger than 20 MB.", "Cut it to the plucks of one span."));
            return null;
        }

        var read = WavReader.Read(file.Bytes, file.Name);
        problems.AddRange(read.Diagnostics);
        if (read.Value is not { } recording)
            return null;
        var found = PitchFinder.Find(recording);
        problems.AddRange(found.Diagnostics);
        return found.Value is { } pitch ? new HeardNote(new(pitch.FundamentalHertz, pitch.StandardHertz), recording, pitch) : null;
    }

    private static HeardNote? Typed(double? hertz, double error) => hertz is { } note ? new HeardNote(Uncertain.Within(note, error), null, null) : null;
}
