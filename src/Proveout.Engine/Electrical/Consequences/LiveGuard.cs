using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A protective device with the loads that lose their power when it opens.</summary>
/// <param name="Branch">Its branch.</param>
/// <param name="Name">What it is called.</param>
/// <param name="IsThermal">True when it guards against heat.</param>
/// <param name="Loads">The loads behind it.</param>
internal sealed record LiveGuard(LiveBranch Branch, string Name, bool IsThermal, LiveLoad[] Loads)
{
    public static IEnumerable<LiveGuard> Of(LiveModel model, LiveLoad[] loads)
    {
        if (model.States.LastOrDefault(state => state.Kind == ControlStateKind.AllOutputs) is not { } all)
            yield break;
        var sound = model.Sound(all);
        foreach (var element in model.Context.Wiring.Elements.Where(element => element.Part is Fuse))
        {
            var open = model.Solve(all, [new Cut(element.Index)]);
            LiveLoad[] behind = [.. loads.Where(load => load.Watts(sound) > 0.25 * load.MostWatts && load.Watts(open) < 0.1 * load.MostWatts)];
            if (behind.Length > 0)
                yield return new(model.Circuit.Branches[element.Index], $"{element.Subject}.{element.Name}", element.Part is Fuse { Curve: FuseCurve.Thermal }, behind);
        }
    }
}
