using System.Runtime.CompilerServices;
using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Network;

/// <summary>How long the network of a state is kept.</summary>
public sealed class StateNetworkTests
{
    [Fact]
    public void A_network_that_nobody_holds_is_let_go_by_the_thread_that_asked_it_for_ways_through_junctions()
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));

        var let = AskedAndLetGo(wiring);
        // Twice, for what finalizers let go.
        for (var turn = 0; turn < 2; turn++)
        {
            GC.Collect();
            GC.WaitForPendingFinalizers();
        }

        Assert.False(let.TryGetTarget(out _));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WeakReference<StateNetwork> AskedAndLetGo(WiringNetwork wiring)
    {
        var state = new StateNetwork(wiring, new MachineState(true, []));
        var (anode, cathode, _) = state.StrayPaths.Junctions[0];
        _ = state.Strays.WayVolts(state.Low.Network.Islands.Of(anode), state.Low.Network.Islands.Of(cathode));
        return new WeakReference<StateNetwork>(state);
    }
}
