using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Campaign.Pairs;

/// <summary>A reading that potentials hold high stays so with any two others made that do not matter, by the networks with all of them in.</summary>
public sealed class PotentialGuardTests
{
    [Fact]
    public void Two_others_that_potentials_leave_out_bring_no_conductance_above_what_was_given()
    {
        var campaign = new WiringCampaign(Repository.Design("alderbrook"));
        var tables = new PairTables(campaign);
        var (random, tried, mattering) = (new Random(20261129), 0, 0L);
        foreach (var setUp in tables.Tables.OfType<PairSetUp>().Where(setUp => !setUp.Table.Low.HasControls))
        {
            var (alone, together) = (new PairLimitWorker(setUp.High, setUp.Faults), new PairLimitWorker(setUp.High, setUp.Faults));
            var guard = new PotentialGuard(setUp.High, alone.Network);
            for (var turn = 0; turn < 300; turn++)
            {
                var (fault, check) = (random.Next(setUp.Faults.Count), setUp.Table.Candidates[random.Next(setUp.Table.Candidates.Length)]);
                alone.Take([fault], ports: null);
                var most = (1 + Math.Pow(10, (random.NextDouble() * 3) - 2)) / alone.Network.Ohms(check.A, check.B);
                if (!guard.TryFind(check.A, check.B, most))
                    continue;
                List<int> lowering = [];
                guard.AddLowering(lowering, together: 2);
                mattering += lowering.Count;
                // Those that lie near are of more interest than most of the machine.
                int[] near = [.. Enumerable.Range(0, setUp.Faults.Count).Where(other => setUp.High.ChangesOf(other).Any(change => Near(change.A, check) || Near(change.B, check)))];
                int[] others = [.. Enumerable.Range(0, 6).Select(number => number % 2 == 0 && near.Length > 0 ? near[random.Next(near.Length)] : random.Next(setUp.Faults.Count)).Where(other => !lowering.Contains(other))];
                foreach (var pair in others.Chunk(2))
                    if (!tables.Contradictions.Among([fault, .. pair]) && !pair.Contains(fault) && pair.Distinct().Count() == pair.Length)
                    {
                        together.Take([fault, .. pair], ports: null);
                        Assert.True(1 / together.Network.Ohms(check.A, check.B) <= most * (1 + 1e-9), $"{setUp.Faults[fault].Fault.Id} with {string.Join(" and ", pair.Select(other => setUp.Faults[other].Fault.Id))} at {check.Check.Id}");
                        tried++;
                    }

                bool Near(int node, CandidateCheck at) => node == at.A || node == at.B;
            }
        }

        Assert.True(tried > 500, $"Only {tried} pairs were tried.");
        Assert.True(mattering < 200L * tried, $"{mattering} faults were said to matter to {tried} trials: the guard says little.");
    }
}
