namespace Proveout.Engine.Electrical;

/// <summary>Everything that takes current, by what part types say of it.</summary>
/// <remarks>
/// A heater holds its temperature with two fifths of its power (common practice, 20 to 40 %). A motor that stands takes the heat of its windings over the
/// efficiency of its driver; at work it does as much mechanical work again as it makes heat (common practice). A converter takes what it gives over its efficiency; from the mains
/// it takes 1/0.65 of that, the power factor of a supply without correction (common practice, 0.6 to 0.65).
/// </remarks>
internal sealed class Demands
{
    private const double HoldShare = 0.4;
    private const double DriverEfficiency = 0.85;
    private const double ConverterEfficiency = 0.85;
    private const double PowerFactor = 0.65;
    private const double WorkOverHeat = 2;

    private readonly ReviewContext _context;
    private readonly Dictionary<SupplyReach, List<Demand>> _on;

    public Demands(ReviewContext context)
    {
        _context = context;
        _on = context.Supplies.ToDictionary(reach => reach, _ => new List<Demand>());
        foreach (var demand in OfLoads().Concat(OfConsumers()).Concat(OfMotors()))
            _on[demand.Reach].Add(demand);
        var begun = new HashSet<SupplyReach>();
        foreach (var reach in context.Supplies)
            AddFeeds(reach, begun);
    }

    /// <summary>What hangs on a supply.</summary>
    public IReadOnlyList<Demand> On(SupplyReach reach) => _on[reach];

    /// <summary>All of it.</summary>
    public IEnumerable<Demand> All => _context.Supplies.SelectMany(On);

    private IEnumerable<Demand> OfLoads() =>
        from load in _context.Loads
        let isHeater = _context.PartOf(load.Element).Type.ClassLetter == "E"
        let amperes = load.NominalAmperes
        select new Demand(load.Element.Subject, load.Reach, load.Fed, load.Returned, isHeater ? HoldShare * amperes : amperes, amperes, amperes);

    private IEnumerable<Demand> OfConsumers() =>
        from port in _context.Consumers
        from reach in _context.SuppliesOf(port.A, port.B)
        let amperes = port.Element.Current.Amperes
        select new Demand(port.Part.Designation, reach, port.A, port.B, amperes, amperes, amperes);

    private IEnumerable<Demand> OfMotors() =>
        from phases in _context.MotorPhases.GroupBy(phase => (phase.Driver, phase.Output.Command, phase.Output.Feed))
        let feed = phases.Key.Feed
        let plus = _context.FindNode(phases.Key.Driver.Designation, feed[0])
        let zero = _context.FindNode(phases.Key.Driver.Designation, feed[1])
        where plus is not null && zero is not null
        from reach in _context.SuppliesOf(plus.Value, zero.Value).Take(1)
        let heat = phases.Sum(phase => phase.Output.Current.Amperes * phase.Output.Current.Amperes * phase.Winding.NominalOhms)
        let amperes = heat / DriverEfficiency / reach.Supply.Volts
        select new Demand(phases.First().Winding.Subject, reach, plus.Value, zero.Value, amperes, amperes, WorkOverHeat * amperes);

    // What hangs on a source must be known before what the source itself takes.
    private void AddFeeds(SupplyReach reach, HashSet<SupplyReach> begun)
    {
        if (!begun.Add(reach))
            return;
        foreach (var below in _context.Supplies.Where(other => _context.FeederOf(other) == reach))
        {
            AddFeeds(below, begun);
            var (part, feed) = (below.Supply.Part!, below.Supply.Source!.Feed!);
            var efficiency = (part.Type.Ratings.Efficiency?.DecimalFractions ?? ConverterEfficiency) * (reach.Supply.IsMains ? PowerFactor : 1);
            var ratio = below.Supply.Volts / reach.Supply.Volts / efficiency;
            _on[reach].Add(new(
                part.Designation,
                reach,
                _context.FindNode(part.Designation, feed.A)!.Value,
                _context.FindNode(part.Designation, feed.B)!.Value,
                ratio * On(below).Sum(demand => demand.SteadyAmperes),
                ratio * On(below).Sum(demand => demand.WarmUpAmperes),
                ratio * On(below).Sum(demand => demand.WorstAmperes)));
        }
    }
}
