using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Each exposed conductive part to the protective conductor of the building.</summary>
internal sealed class MetalReadings : ILiveCheckRule
{
    public IEnumerable<LiveObservation> Generate(LiveChecks checks)
    {
        var context = checks.Model.Context;
        if (checks.Model.Mains is null || Protective(context) is not { } protective)
            yield break;
        foreach (var (part, terminal) in MetalDoesNotTingle.Metal(context))
            foreach (var state in new[] { checks.Resting, checks.Everything }.Distinct())
                yield return checks.Reading(
                    LivePlace.Mated(context, terminal),
                    protective,
                    null,
                    state,
                    VoltageBand.Metal,
                    $"AC volts: red lead on bare metal of {LoadWords.Of(part)}, black lead on the protective contact of a free outlet beside that of the machine.",
                    "Bonded metal has the potential of the protective conductor.");
    }

    // The contact of the mains lead's plug, which has the potential of the outlet beside it.
    private static LivePlace? Protective(WiringContext context) =>
        MainsInlets.Of(context.Design)
            .Select(inlet => MainsInlets.Find(inlet.Part, inlet.Connector, TerminalRole.ProtectiveEarth))
            .OfType<TerminalReference>()
            .Select(terminal => LivePlace.Mated(context, terminal))
            .FirstOrDefault();
}
