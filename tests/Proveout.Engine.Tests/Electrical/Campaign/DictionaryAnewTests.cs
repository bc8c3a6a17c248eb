using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Campaign;

/// <summary>What the dictionary says of resistances, insulation and junctions beside them included, against networks built anew from the list of elements of the faulty machine.</summary>
public sealed class DictionaryAnewTests
{
    // Twice the share below which a change is none.
    private const double RelativeTolerance = 2e-7;

    [Theory]
    [InlineData("pennywort", 3)]
    [InlineData("quarrymoor", 15)]
    [InlineData("alderbrook", 9)]
    public void Every_resistance_in_every_set_up_is_that_of_a_network_built_anew(string sample, int step)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        var (dictionary, joined) = (campaign.Run(), 0);
        foreach (var (table, setUp) in campaign.PortTables().Zip(DeadSetUps.Of(campaign.Context.Design)))
        {
            var sound = new Anew(campaign.Context.Wiring, new FaultyWiring(campaign.Context.Wiring, setUp.State, null));
            for (var fault = 0; fault < campaign.Faults.Count; fault += step)
            {
                var anew = new Anew(campaign.Context.Wiring, new FaultyWiring(campaign.Context.Wiring, setUp.State, campaign.Faults[fault]));
                for (var index = 0; index < table.Candidates.Length; index++)
                {
                    // What is not listed reads as in the sound machine, whose limits are these or the sharper ones that checks expect; or it is over range more surely.
                    var expected = anew.Shown(table.Candidates[index]);
                    var listed = dictionary.ResponseOf(fault).At(table.FirstCheck + index);
                    var shown = listed ?? sound.Shown(table.Candidates[index]);
                    Assert.True(
                        AreSame(expected, shown) || (listed is null && AreSame(expected, table.Candidates[index].Check.Expectation)) || (listed is null && expected.IsOverRangeOnly && double.IsPositiveInfinity(shown.High)),
                        $"{table.Candidates[index].Check.Id} shows {shown} under {campaign.Faults[fault].Fault.Id}, built anew {expected}.");
                    joined += table.Candidates[index].Check.Expectation.IsOverRangeOnly && !shown.IsOverRangeOnly ? 1 : 0;
                }
            }
        }

        Assert.True(joined > 50, $"{joined} open readings were closed: the trial says little.");
    }

    private static bool AreSame(ReadingInterval one, ReadingInterval other) => AreSame(one.Low, other.Low) && AreSame(one.High, other.High);

    // Leads and the last digits of the meter take 0.4 ohm from what is shown: of a reading near zero few digits of the resistance are left.
    private static bool AreSame(double one, double other) => one.Equals(other) || Math.Abs(one - other) <= RelativeTolerance * (Math.Min(Math.Abs(one), Math.Abs(other)) + 0.4);

    // The two limits of a faulty machine, with what touches each piece of the lower.
    private sealed class Anew(WiringNetwork wiring, FaultyWiring faulty)
    {
        private readonly ResistorNetwork _low = Network(wiring, faulty.Low);
        private readonly ResistorNetwork _high = Network(wiring, faulty.High);
        private StrayPieces? _strays;

        public ReadingInterval Shown(CandidateCheck candidate)
        {
            _strays ??= new StrayPaths(wiring).Of(_low.Islands, (_, _) => throw new InvalidOperationException("A resistance asks for no way."));
            var (a, b) = (candidate.A, candidate.B);
            var low = _strays.LowerLimit(_low.Resistance(a, b), _low.Islands.Of(a), _low.Islands.Of(b));
            return candidate.Mode.Shown(low, Math.Max(low, _high.Resistance(a, b)));
        }

        private static ResistorNetwork Network(WiringNetwork wiring, Resistor[] resistors) =>
            new(wiring.Nodes.Count, [.. resistors.Select(resistor => new Edge(resistor.A, resistor.B, 1 / resistor.Ohms))]);
    }
}
