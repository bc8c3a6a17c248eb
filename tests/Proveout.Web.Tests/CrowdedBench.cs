using System.Reflection;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>A bench whose machines have more threes of mistakes than a page waits for.</summary>
public class CrowdedBench : DispatchProxy
{
    private IBench _inner = null!;

    /// <summary>What it says of them.</summary>
    public static Diagnostic Why { get; } = new("many-threes", new SourcePlace("machine", 0, 0), "There are too many.", "Ask at a terminal.");

    /// <summary>A bench that answers all else as another does.</summary>
    public static IBench Of(IBench inner)
    {
        var bench = Create<IBench, CrowdedBench>();
        ((CrowdedBench)(object)bench)._inner = inner;
        return bench;
    }

    /// <inheritdoc/>
    protected override object? Invoke(MethodInfo? targetMethod, object?[]? args) =>
        targetMethod!.Name == nameof(IBench.Threes) ? Outcome.Refused<TriplesView>([Why]) : targetMethod.Invoke(_inner, args);
}
