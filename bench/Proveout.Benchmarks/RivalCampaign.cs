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
        (wiring, state, atHigh) => (fault, ports) => readingsOf(wiring.Nodes.Count, FaultyNetwork.Edges(wiring, state, fault, atHigh), ports);

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
}
