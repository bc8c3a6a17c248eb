using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>Live models of the samples, each made once.</summary>
internal static class LiveSamples
{
    private static readonly ConcurrentDictionary<string, Lazy<LiveConsequences>> Consequences = new();
    private static readonly ConcurrentDictionary<string, Lazy<LiveModel>> Models = new();

    public static LiveModel Model(string sample) => Models.GetOrAdd(
        sample, name => new(() => new LiveModel(new WiringContext(WiringNetworkBuilder.Build(Repository.Design(name)))))).Value;

    public static LiveConsequences Of(string sample) => Consequences.GetOrAdd(sample, name => new(() => new LiveConsequences(Model(name)))).Value;

    public static WiringFault[] Faults(LiveModel model) => [.. WiringFaultRules.All.SelectMany(rule => rule.Generate(model.Context))];

    public static WiringFault Fault(string sample, string id) => Faults(Model(sample)).Single(fault => fault.Fault.Id == id);

    public static ControlState State(LiveModel model, ControlStateKind kind) => model.States.Last(state => state.Kind == kind);
}
