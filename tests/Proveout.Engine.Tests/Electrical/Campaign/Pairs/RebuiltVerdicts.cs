using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Which checks surely catch some faults together, by a dense solution of the whole machine built anew with all of them in it.</summary>
internal sealed class RebuiltVerdicts
{
    private readonly WiringCampaign _campaign;
    private readonly CandidateCheck[][] _checks;
    private readonly MachineState[] _states;
    private readonly (double LowOhms, double HighOhms)[][] _sound;

    public RebuiltVerdicts(WiringCampaign campaign)
    {
        _campaign = campaign;
        _checks = [.. campaign.PortTables().Select(table => table.Candidates)];
        _states = [.. DeadSetUps.Of(campaign.Context.Design).Select(setUp => setUp.State)];
        _sound = [.. _checks.Select((_, setUp) => Limits(setUp, null))];
    }

    /// <summary>True when two faults change the same element.</summary>
    public bool Contradict(int one, int two) => Elements(one).Intersect(Elements(two)).Any();

    /// <summary>Indices of the checks that surely catch the faults together.</summary>
    public int[] Catching(params int[] faults)
    {
        var together = new WiringFault(_campaign.Faults[faults[0]].Fault, [.. faults.SelectMany(fault => _campaign.Faults[fault].Changes)]);
        List<int> catching = [];
        var first = 0;
        for (var setUp = 0; setUp < _checks.Length; setUp++)
        {
            var limits = Limits(setUp, together);
            for (var index = 0; index < limits.Length; index++)
                if (IsCaught(_checks[setUp][index], limits[index], _sound[setUp][index]))
                    catching.Add(first + index);
            first += limits.Length;
        }

        return [.. catching];
    }

    private static bool IsCaught(CandidateCheck check, (double LowOhms, double HighOhms) limits, (double LowOhms, double HighOhms) sound) =>
        !(IsSame(limits.LowOhms, sound.LowOhms) && IsSame(limits.HighOhms, sound.HighOhms))
        && check.Mode.Shown(limits.LowOhms, Math.Max(limits.LowOhms, limits.HighOhms)).IsDisjointFrom(check.Check.Expectation);

    private static bool IsSame(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-8 * Math.Min(one, two);

    private (double LowOhms, double HighOhms)[] Limits(int setUp, WiringFault? fault)
    {
        var wiring = _campaign.Context.Wiring;
        var dense = new DenseWiring(wiring, new FaultyWiring(wiring, _states[setUp], fault));
        return [.. _checks[setUp].Select(dense.Limits)];
    }

    private IEnumerable<int> Elements(int fault) => _campaign.Faults[fault].Changes.SelectMany(change => change switch
    {
        Cut cut => [cut.Element],
        AddInSeries series => [series.Element],
        Replace replace => [replace.Element],
        _ => Array.Empty<int>(),
    });
}
