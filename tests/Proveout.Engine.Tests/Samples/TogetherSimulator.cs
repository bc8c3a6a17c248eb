using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Samples;

/// <summary>Several wiring faults at once by the campaign's own simulation of all checks: slow, remembers what it was asked.</summary>
internal sealed class TogetherSimulator(WiringCampaign campaign) : IFaultSimulator
{
    private readonly Dictionary<string, IReadOnlyList<ReadingInterval>?> _known = [];
    private readonly Lock _gate = new();

    public ReadingInterval? Shown(ReadOnlySpan<int> faults, int check)
    {
        var set = faults.ToArray();
        lock (_gate)
        {
            var key = string.Join(',', set);
            if (!_known.TryGetValue(key, out var shown))
                _known[key] = shown = Together(set);
            return shown?[check];
        }
    }

    private IReadOnlyList<ReadingInterval>? Together(int[] faults)
    {
        try
        {
            return campaign.SimulateTogether(faults);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
