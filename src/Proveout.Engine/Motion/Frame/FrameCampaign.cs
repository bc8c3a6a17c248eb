using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>What every mistake at a frame shows at every check of it, in the form that plan and diagnosis work on.</summary>
/// <remarks>A mistake shifts a reading by an amount between two bounds; what a sound frame may show is added to both ends, so that the interval holds every case.</remarks>
public sealed class FrameCampaign : IFaultSimulator
{
    internal const string SetUpId = "frame-unplugged";

    private static readonly SetUp Unplugged = new(
        SetUpId,
        "Machine unplugged, gantry free to be pushed by hand",
        ["Pull the plug.", "Slacken the belts of the gantry, or take them off."],
        ["Nothing may start while hands are in the frame. A gantry that stands upright can drop: block it first."],
        300);

    private readonly FrameMistake[] _mistakes;
    private readonly Check[] _checks;

    private FrameCampaign(FrameMistake[] mistakes, Check[] checks)
    {
        (_mistakes, _checks) = (mistakes, checks);
        Dictionary = new FaultDictionary([Unplugged, FrameSymptoms.InUse], checks, [.. mistakes.Select(mistake => mistake.ToFault())], [.. mistakes.Select(ResponseOf)]);
    }

    /// <summary>What every check shows under every mistake.</summary>
    public FaultDictionary Dictionary { get; }

    /// <summary>The campaign of a frame.</summary>
    public static FrameCampaign Of(FrameDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new([.. FrameMistake.Of(design)], FrameCheck.Of(design));
    }

    /// <inheritdoc/>
    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check)
    {
        var (low, high) = (_checks[check].Expectation.Low, _checks[check].Expectation.High);
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fault in faults)
        {
            // The same thing cannot be wrong both ways.
            if (!kinds.Add(_mistakes[fault].Kind))
                return null;
            foreach (var effect in _mistakes[fault].Effects.Where(effect => effect.Check == check))
                (low, high) = (low + effect.Low, high + effect.High);
        }

        // Two mistakes that both show are seen as one.
        return Symptom.Is(_checks[check]) ? new ReadingInterval(Math.Max(0, low), Math.Max(0, high)) : new ReadingInterval(low, high);
    }

    private FaultResponse ResponseOf(FrameMistake mistake)
    {
        var effects = mistake.Effects.OrderBy(effect => effect.Check).ToArray();
        return new FaultResponse(
            [.. effects.Select(effect => effect.Check)],
            [.. effects.Select(effect => new ReadingInterval(_checks[effect.Check].Expectation.Low + effect.Low, _checks[effect.Check].Expectation.High + effect.High))]);
    }
}
