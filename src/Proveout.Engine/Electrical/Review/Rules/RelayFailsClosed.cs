using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An electronic switch ends its life closed; something else can then take its mains load off.</summary>
internal sealed class RelayFailsClosed : IReviewRule
{
    // Below this a load that stays on is no danger of fire: common practice.
    private const double LeastWatts = 60;

    public string Id => "relay-fails-closed";

    public string Words => "a second way to take off a mains load whose electronic switch fails closed";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var driven = context.Design.Parts.Where(part => part.Type.Circuit.OfType<Drive>().Any()).Select(part => part.Designation).ToHashSet(StringComparer.Ordinal);
        foreach (var mains in context.Supplies.Where(reach => reach.Supply.IsMains))
        {
            var left = context.JoinedTo(mains.Supply.Plus, element =>
                element.Part is Fuse { Curve: FuseCurve.Thermal } || (element.Part is Contact && driven.Contains(element.Subject)));
            foreach (var load in context.Loads.Where(load => load.Reach == mains && mains.Supply.Volts * load.NominalAmperes >= LeastWatts && left.Contains(load.Fed)))
                if (mains.WayTo(load.Fed).Select(step => step.Element).FirstOrDefault(element => element.Part is SwitchedPath or Insulation) is { } relay)
                    yield return new Finding(
                        Id,
                        FindingSeverity.Error,
                        [relay.Subject, load.Element.Subject],
                        $"{relay.Subject} alone switches {load.Element.Subject} ({ReviewContext.Number(mains.Supply.Volts * load.NominalAmperes, 0)} W): it fails closed, and then neither a cut-off nor a contactor takes the load off.",
                        "Put a thermal cut-off into the line, and a contactor that the emergency stop or a second sensor releases.",
                        "IEC 60335-1 clause 19 asks for protection when a control fails; solid-state relays usually fail closed, common practice");
        }
    }
}
