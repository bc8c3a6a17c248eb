using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>Finds the readings of some checks under a fault, in a state of the machine at one limit.</summary>
internal delegate double[] RivalReadings(WiringFault fault, CandidateCheck[] ports);

/// <summary>The readings of some faults found by factoring the network anew for each of them.</summary>
internal static class RivalCampaign
{
    /// <summary>A rival that is given nothing but the resistors that a fault leaves.</summary>
    public static Func<WiringNetwork, StateNetwork, bool, RivalReadings> Unprepared(Func<int, Edge[], CandidateCheck[], double[]> readingsOf) =>
        (wiring, state, atHigh) => (fault, ports) => readingsOf(wiring.Nodes.Count, FaultyNetwork.Edges(state, fault, atHigh), ports);

    /// <summary>Processor and elapsed seconds for a sample of faults spread over all, and processor seconds for one reading at one limit.</summary>
    public static ((double Processor, double Elapsed) Time, double SecondsAReading) Measure(
        WiringCampaign campaign, int sample, Func<WiringNetwork, StateNetwork, bool, RivalReadings> prepare)
    {
        var wiring = campaign.Context.Wiring;
        var setUps = DeadSetUps.Of(wiring.Design).ToArray();
        var step = campaign.Faults.Count / sample;
        var seconds = (Processor: 0.0, Elapsed: 0.0);
        foreach (var table in campaign.PortTables())
        {
            // One state at a time, made before the clock runs: of a large machine they do not all fit in memory.
            var state = new StateNetwork(wiring, setUps[table.Candidates[0].SetUp].State);
            var (atLow, atHigh) = (prepare(wiring, state, false), prepare(wiring, state, true));
            var time = ProcessorTime.Of(1, () =>
            {
                for (var fault = 0; fault < sample; fault++)
                {
                    atLow(campaign.Faults[fault * step], table.Candidates);
                    atHigh(campaign.Faults[fault * step], table.Candidates);
                }
            });
            seconds = (seconds.Processor + time.Processor, seconds.Elapsed + time.Elapsed);
        }

        return (seconds, seconds.Processor / (2.0 * sample * campaign.CandidateCount));
    }

    /// <summary>The largest difference between what two rivals read, as a share of the reading, of those below an upper limit: a rival that reads something else would be no rival.</summary>
    public static double LargestDifference(
        WiringCampaign campaign,
        int sample,
        Func<WiringNetwork, StateNetwork, bool, RivalReadings> one,
        Func<WiringNetwork, StateNetwork, bool, RivalReadings> other,
        double belowOhms)
    {
        var wiring = campaign.Context.Wiring;
        var setUps = DeadSetUps.Of(wiring.Design).ToArray();
        var step = campaign.Faults.Count / sample;
        return campaign.PortTables().Max(table =>
        {
            var state = new StateNetwork(wiring, setUps[table.Candidates[0].SetUp].State);
            var (readsOne, readsOther) = (one(wiring, state, true), other(wiring, state, true));
            return Enumerable.Range(0, sample).Max(index => readsOne(campaign.Faults[index * step], table.Candidates)
                .Zip(readsOther(campaign.Faults[index * step], table.Candidates))
                .Where(pair => pair.First < belowOhms || pair.Second < belowOhms)
                .Select(pair => Math.Abs(pair.First - pair.Second) / Math.Min(pair.First, pair.Second))
                .DefaultIfEmpty()
                .Max());
        });
    }
}
