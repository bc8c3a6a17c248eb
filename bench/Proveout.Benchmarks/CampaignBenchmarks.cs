using BenchmarkDotNet.Attributes;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>The wiring fault campaign of the largest sample, step by step.</summary>
[InProcess]
[MemoryDiagnoser]
public class CampaignBenchmarks
{
    private MachineDesign _design = null!;
    private WiringCampaign _campaign = null!;
    private FaultDictionary _dictionary = null!;

    /// <summary>Reads the machine.</summary>
    [GlobalSetup]
    public void Read()
    {
        _design = Flagship.Read();
        _campaign = new WiringCampaign(_design);
        _dictionary = _campaign.Run();
    }

    /// <summary>Network, set-ups, candidate checks with their expectations, faults.</summary>
    [Benchmark]
    public WiringCampaign Prepare() => new(_design);

    /// <summary>Every fault at every check, both limits.</summary>
    [Benchmark]
    public FaultDictionary Run() => _campaign.Run();

    /// <summary>The choice of checks without the exact solver.</summary>
    [Benchmark]
    public CheckPlan GreedyPlan() => CheckPlan.Of(_dictionary, onlyGreedy: true);
}
