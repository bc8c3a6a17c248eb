using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Touch voltage of every exposed conductive part, and how long it stays.</summary>
internal sealed class TouchVoltages : ILiveRule
{
    /// <summary>Touch voltage that may stay, in volts: IEC 60364-4-41 clauses 411.3.2 and 414.1.1.</summary>
    public const double LimitVolts = 50;

    /// <summary>The same for direct voltage.</summary>
    public const double LimitDirectVolts = 120;

    public Severity Worst => Severity.Shock;

    public void Look(LiveLook look)
    {
        foreach (var exposed in look.Sights.Exposed)
        {
            var (first, last) = (look.First.AcVolts(exposed.Node).Magnitude, look.Last.AcVolts(exposed.Node).Magnitude);
            var direct = Math.Abs(look.Last.DcVolts(exposed.Node));
            if (direct > LimitDirectVolts)
                look.Add(
                    LiveFindingKind.TouchVoltage, Severity.Shock, exposed.Name, direct, LimitDirectVolts, "V",
                    $"{exposed.Name} stands at {LiveLook.Figure(direct)} V direct voltage against earth.");
            if (last > LimitVolts && BodyCurrent.IsFelt(look, exposed.Node, last, out var amperes))
                look.Add(
                    LiveFindingKind.TouchVoltage, Severity.Shock, exposed.Name, last, LimitVolts, "V",
                    $"{exposed.Name} stays at {LiveLook.Figure(last)} V against earth, good for {LiveLook.Figure(amperes * 1000)} mA through a person.");
            else if (first > LimitVolts && look.AllSeconds > LongestSeconds(look.Model))
                look.Add(
                    LiveFindingKind.TouchVoltage, Severity.Shock, exposed.Name, first, LimitVolts, "V",
                    $"{exposed.Name} stands at {LiveLook.Figure(first)} V for up to {LiveLook.Figure(look.AllSeconds)} s, {LiveLook.Figure(LongestSeconds(look.Model))} s are allowed.");
        }
    }

    /// <summary>Longest disconnection time: IEC 60364-4-41 table 41.1, final circuits, alternating voltage.</summary>
    public static double LongestSeconds(LiveModel model)
    {
        var local = model.Mains?.Earthing is Machine.SystemEarthing.TT;
        return (model.Mains?.Volts ?? 0) switch
        {
            <= 120 => local ? 0.3 : 0.8,
            <= 230 => local ? 0.2 : 0.4,
            <= 400 => local ? 0.07 : 0.2,
            _ => local ? 0.04 : 0.1,
        };
    }
}
