using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What is asked of recordings, read from what was typed and chosen.</summary>
/// <param name="Options">How tables are read.</param>
/// <param name="Demand">What is asked of shapers.</param>
/// <param name="Excitation">How the machine was made to vibrate.</param>
/// <param name="Sweep">What a sweep is divided by; null for what is none.</param>
/// <param name="PathSpeed">Speed along the path, in m/s.</param>
internal sealed record ResonanceAsked(SignalOptions Options, ShaperDemand Demand, Excitation Excitation, SweepKind? Sweep, double PathSpeed)
{
    public static (ResonanceAsked Asked, IReadOnlyList<Diagnostic> Problems) Read(ResonanceRequest request)
    {
        var typed = new TypedFigures(request.Typed);
        var (lowest, highest) = (typed.Require(ResonanceFields.Lowest), typed.Require(ResonanceFields.Highest));
        if (lowest >= highest && typed.Problems.Count == 0)
            typed.Refuse(ResonanceFields.Highest, "no-band", "It is not above the frequency from which resonances are sought.", "Give a higher one.");
        var demand = new ShaperDemand(
            typed.Require(ResonanceFields.Tolerance) / 100, typed.Require(ResonanceFields.CornerError) / 1000, typed.Require(ResonanceFields.CornerSpeed) / 1000, lowest, highest, typed.Require(ResonanceFields.Wander) / 100);
        var resolution = typed.Require(ResonanceFields.Resolution);
        var speed = typed.Require(ResonanceFields.PathSpeed) / 1000;
        List<Diagnostic> problems = [.. typed.Problems];
        var chosen = ResonanceRequest.Choices.ToDictionary(choice => choice.Name, choice => Chosen(request, choice.Name, choice.Label, choice.List, problems), StringComparer.Ordinal);
        var excitedBy = chosen[ResonanceRequest.ExcitedBy];
        var kept = ResonanceChoices.SweepKeeps.Select(choice => choice.Name).ToList().IndexOf(chosen[ResonanceRequest.SweepKeeps]);
        return (new(
            new SignalOptions(chosen[ResonanceRequest.TimeUnit], chosen[ResonanceRequest.AccelerationUnit], resolution),
            demand,
            excitedBy switch { ResonanceChoices.Sweep => Excitation.Drive, ResonanceChoices.Blows or ResonanceChoices.Noise => Excitation.Force, _ => Excitation.NotTold },
            excitedBy == ResonanceChoices.Sweep ? SweepKind.Keeping(Math.Max(0, kept), chosen[ResonanceRequest.SweepRises] == "octaves") : null,
            speed), problems);
    }

    private static string Chosen(ResonanceRequest request, string name, string label, IReadOnlyList<(string Name, string Words)> list, List<Diagnostic> problems)
    {
        var text = request.Chosen.GetValueOrDefault(name, "").Trim();
        if (text.Length == 0)
            return list[0].Name;
        if (list.Any(choice => choice.Name == text))
            return text;
        problems.Add(new Diagnostic("no-such-choice", new SourcePlace(label, 0, 0), $"`{text}` is none of the choices.", $"Choose one of {string.Join(", ", list.Select(choice => choice.Name).Where(choice => choice.Length > 0))}."));
        return list[0].Name;
    }
}
