using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What electronics, coils, motor drivers and electronic switches turn into heat.</summary>
internal static class LoadLosses
{
    // Of what a driver takes, 75 to 92 % reach the windings; common practice. A motor that stands may be held with half its current, and so a quarter of its heat.
    private const double DriverEfficiencyLow = 0.75;
    private const double DriverEfficiencyHigh = 0.92;
    private const double HeldHeat = 0.25;

    // A heater holds its temperature with a fifth to two fifths of its power, common practice.
    private const double HeldShareLow = 0.2;
    private const double HeldShareHigh = 0.4;

    // Data sheets give the most: 1.6 V where 1 V is usual.
    private const double LeastDrop = 0.6;

    // 125 °C is the end, 115 °C the design value: common practice.
    private const double DesignJunction = 115;

    public static IEnumerable<LossLine> Lines(ReviewContext context, HashSet<string> inside) =>
        [.. Electronics(context, inside), .. Resistances(context, inside), .. Drivers(context, inside), .. SwitchLines(context, inside)];

    public static IEnumerable<SwitchLoss> Switches(ReviewContext context, HashSet<string> inside) =>
        from element in context.Switches
        let part = context.PartOf(element)
        where inside.Contains(part.Designation)
        let flow = context.Currents.In(element)
        where flow is not null && part.Type.Ratings is { Drop: not null, JunctionToBase: not null }
        select new SwitchLoss(
            part.Designation,
            LossShares.Most * part.Type.Ratings.Drop!.Value.Volts * flow.Amperes,
            part.Type.Ratings.JunctionToBase!.Value.KelvinsPerWatt,
            part.Type.Ratings.Junction?.DegreesCelsius ?? DesignJunction,
            SwitchSink.Of(context, part));

    private static IEnumerable<LossLine> Electronics(ReviewContext context, HashSet<string> inside) =>
        from port in context.Consumers
        where inside.Contains(port.Part.Designation) && context.SuppliesOf(port.A, port.B).Any()
        group port.Element.Voltage.Volts * port.Element.Current.Amperes by port.Part.Designation into watts
        let sum = watts.Sum()
        select new LossLine(watts.Key, LossKind.Electronics, LossShares.Least * sum, LossShares.Most * sum, LossShares.Most * sum, $"takes up to {LossShares.Number(sum)} W by its type");

    private static IEnumerable<LossLine> Resistances(ReviewContext context, HashSet<string> inside) =>
        from load in context.Loads
        where inside.Contains(load.Element.Subject)
        let isHeater = context.PartOf(load.Element).Type.ClassLetter == "E"
        let squared = load.Reach.Supply.Volts * load.Reach.Supply.Volts
        let least = squared / load.Element.HighOhms
        let most = squared / load.Element.LowOhms
        select new LossLine(
            load.Element.Subject,
            LossKind.Resistance,
            (isHeater ? HeldShareLow : 1) * least,
            (isHeater ? HeldShareHigh : 1) * most,
            most,
            $"{LossShares.Number(load.Reach.Supply.Volts)} V over its resistance");

    private static IEnumerable<LossLine> Drivers(ReviewContext context, HashSet<string> inside) =>
        from phase in context.MotorPhases
        where inside.Contains(phase.Driver.Designation)
        let amperes = phase.Output.Current.Amperes
        group (Least: amperes * amperes * phase.Winding.LowOhms, Most: amperes * amperes * UsualMost(phase.Winding)) by phase.Driver.Designation into heat
        let least = HeldHeat * heat.Sum(phase => phase.Least) * ((1 / DriverEfficiencyHigh) - 1)
        let most = heat.Sum(phase => phase.Most) * ((1 / DriverEfficiencyLow) - 1)
        // At work as much again passes the driver as mechanical work.
        select new LossLine(heat.Key, LossKind.Driver, least, most, 2 * most, $"motor drivers lose 8 to 25 % of what they take for {heat.Count()} windings");

    private static IEnumerable<LossLine> SwitchLines(ReviewContext context, HashSet<string> inside) =>
        from element in context.Switches
        where inside.Contains(element.Subject)
        let flow = context.Currents.In(element)
        where flow is not null
        let rest = flow.Demands.Sum(demand => demand.SteadyAmperes)
        let drop = context.PartOf(element).Type.Ratings.Drop?.Volts
        let line = drop is { } volts
            ? (Least: LeastDrop * volts * LossShares.Least * rest, Steady: volts * LossShares.Most * rest, Work: volts * LossShares.Most * flow.Amperes)
            : (Least: Square(LossShares.Least * rest) * element.LowOhms, Steady: Square(LossShares.Most * rest) * ClosedOhms(element), Work: Square(LossShares.Most * flow.Amperes) * ClosedOhms(element))
        group (line, drop, flow.Amperes) by element.Subject into lines
        select new LossLine(
            lines.Key,
            LossKind.Switch,
            lines.Sum(item => item.line.Least),
            lines.Sum(item => item.line.Steady),
            lines.Sum(item => item.line.Work),
            lines.First().drop is { } said
                ? $"{LossShares.Number(said)} V across it while it conducts {LossShares.Number(lines.Sum(item => item.Amperes))} A"
                : $"resistance of {lines.Count()} electronic switches times the square of their currents");

    // As an element of the wiring it may be open; while it conducts it has the resistance that its type gives.
    private static double ClosedOhms(NetworkElement element) => element.Part is SwitchedPath { Value.High: { } high } ? high.Ohms : element.NominalOhms;

    private static double UsualMost(NetworkElement element) => double.IsFinite(element.HighOhms) ? element.HighOhms : element.NominalOhms;

    private static double Square(double value) => value * value;
}
