using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Which checks surely catch some faults together, by a dense solution of the whole machine built anew with all of them in it.</summary>
/// <remarks>Readings of resistance are solved densely; what other meters show is taken from the campaign, told that all the faults are one.</remarks>
internal sealed class RebuiltVerdicts
{
    private readonly WiringCampaign _campaign;
    private readonly PortTable[] _tables;
    private readonly ICheckWorker[] _workers;
    private readonly MachineState[] _states;
    private readonly (double LowOhms, double HighOhms)[][] _sound;
    private readonly bool[] _isResistance;
    private readonly ReadingInterval[] _expected;

    public RebuiltVerdicts(WiringCampaign campaign)
    {
        _campaign = campaign;
        _tables = campaign.PortTables();
        _workers = WiringCampaign.Workers(campaign.Tables());
        MachineState[] ofSetUps = [.. DeadSetUps.Of(campaign.Context.Design).Select(setUp => setUp.State)];
        _states = [.. _tables.Select(table => ofSetUps[table.Candidates[0].SetUp])];
        _sound = [.. _tables.Select((_, table) => Limits(table, null))];
        _expected = [.. campaign.Expectations];
        _isResistance = new bool[campaign.CandidateCount];
        foreach (var table in _tables)
            Array.Fill(_isResistance, true, table.FirstCheck, table.Candidates.Length);
    }

    /// <summary>True when two faults change the same element.</summary>
    public bool Contradict(int one, int two) => Elements(one).Intersect(Elements(two)).Any();

    /// <summary>Indices of the checks that surely catch the faults together.</summary>
    public int[] Catching(params int[] faults)
    {
        var together = new WiringFault(_campaign.Faults[faults[0]].Fault, [.. faults.SelectMany(fault => _campaign.Faults[fault].Changes)]);
        List<int> catching = [];
        for (var table = 0; table < _tables.Length; table++)
        {
            var limits = Limits(table, together);
            for (var index = 0; index < limits.Length; index++)
                if (IsCaught(_tables[table].Candidates[index], limits[index], _sound[table][index]))
                    catching.Add(_tables[table].FirstCheck + index);
        }

        var readings = new AlteredReadings();
        foreach (var worker in _workers)
            worker.AddResponses(together, readings);
        catching.AddRange(readings.Checks.Where((check, place) => !_isResistance[check] && readings.Intervals[place].IsDisjointFrom(_expected[check])));
        return [.. catching.Order()];
    }

    private static bool IsCaught(CandidateCheck check, (double LowOhms, double HighOhms) limits, (double LowOhms, double HighOhms) sound) =>
        !(IsSame(limits.LowOhms, sound.LowOhms) && IsSame(limits.HighOhms, sound.HighOhms))
        && check.Mode.Shown(limits.LowOhms, Math.Max(limits.LowOhms, limits.HighOhms)).IsDisjointFrom(check.Check.Expectation);

    private static bool IsSame(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-8 * Math.Min(one, two);

    private (double LowOhms, double HighOhms)[] Limits(int table, WiringFault? fault)
    {
        var wiring = _campaign.Context.Wiring;
        var dense = new DenseWiring(wiring, new FaultyWiring(wiring, _states[table], fault));
        return [.. _tables[table].Candidates.Select(dense.Limits)];
    }

    private IEnumerable<int> Elements(int fault) => _campaign.Faults[fault].Changes.Select(change => change.ChangedElement).OfType<int>();
}
