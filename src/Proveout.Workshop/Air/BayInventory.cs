using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What gives off heat in a bay, and what bears how much: by the types of its parts, or by what the machine file says of them.</summary>
internal sealed class BayInventory
{
    // Air beside a part among others is warmer than the mean; common practice.
    private const double UsualAboveAir = 5;

    // What is asked of a supply may be a tenth more than part types say.
    private const double AskedMore = 1.1;

    // What makes less than that is counted, and not told of.
    private const double LeastTold = 0.05;

    private readonly MachineDesign _design;
    private readonly Bay _bay;
    private readonly MachineLosses _losses;
    private readonly Dictionary<string, BayContent> _contents;

    public BayInventory(MachineDesign design, Bay bay)
    {
        (_design, _bay) = (design, bay);
        Inside = BayParts.Of(design, bay);
        _contents = bay.Contents.ToDictionary(content => content.Part, StringComparer.Ordinal);
        _losses = MachineLosses.Of(design, Inside, (bay.Inside.Width + bay.Inside.Height + bay.Inside.Depth!.Value).Meters);
        Heat = [.. HeatOf().OrderByDescending(heat => heat.WorkMost)];
        Parts = [.. PartsOf(), .. SwitchParts()];
    }

    /// <summary>The parts in it.</summary>
    public IReadOnlyList<Part> Inside { get; }

    /// <summary>What gives off heat, the warmest first.</summary>
    public IReadOnlyList<PartHeat> Heat { get; }

    /// <summary>Parts that the air may become too warm for.</summary>
    public IReadOnlyList<BayPart> Parts { get; }

    /// <summary>Electronic switches with what carries their heat away.</summary>
    public IEnumerable<(SwitchLoss Switch, SwitchOnSink Sink)> Switches =>
        from found in _losses.Switches
        where found.Sink is not null
        select (found, new SwitchOnSink(found.Watts, found.JunctionToBase, SwitchOnSink.WithPaste, found.Sink!.KelvinsPerWatt));

    /// <summary>Its air.</summary>
    public BayAir Air => BayAirs.Of(_design, _bay, new(Heat.Sum(heat => heat.RestLeast), Heat.Sum(heat => heat.RestMost)), Heat.Sum(heat => heat.WorkMost), Parts);

    /// <summary>By how much the air at a part is warmer than the air that leaves.</summary>
    public double AboveAir(string part) => _contents.GetValueOrDefault(part)?.AboveAir?.Kelvins ?? UsualAboveAir;

    /// <summary>What is not known, each with its place and what to write.</summary>
    public IEnumerable<string> NotKnown()
    {
        foreach (var (part, what) in _losses.NotKnown)
            if (_contents.GetValueOrDefault(part)?.MostHeat is null)
                yield return $"Heat of {part}: {what}. It is not counted, so all temperatures here are too low by its share; write `{part}: {{most-heat: 5 W}}` under `contents` of {_bay.Name}.";
        foreach (var part in Inside.Where(part => part.Type.ClassLetter is "A" or "T" && Parts.All(known => known.Designation != part.Designation)))
            yield return $"What air {part.Designation} bears: its type {part.Type.Id} does not say. Electronics are commonly kept below 50 °C; write `{part.Designation}: {{air-limit: 60 degC}}` by its data sheet under `contents` of {_bay.Name}.";
        foreach (var found in _losses.Switches.Where(found => found.Sink is null))
            yield return $"What carries the heat of {found.Part} to the air: neither its type nor what it is mounted on says `to-air`. Write `ratings: {{to-air: 2 K/W}}` into the type of its heat sink.";
        if (_bay.Wall is null)
            yield return $"The walls of {_bay.Name}: nothing is counted on them. Write `wall: {{material: steel, thickness: 1.5 mm}}`.";
    }

    private IEnumerable<PartHeat> HeatOf()
    {
        foreach (var lines in _losses.Lines.Where(line => _contents.GetValueOrDefault(line.Part)?.MostHeat is null).GroupBy(line => line.Part))
            yield return new(lines.Key, lines.Sum(line => line.RestLowWatts), lines.Sum(line => line.RestHighWatts), lines.Sum(line => line.WorkWatts), [.. lines.Where(line => line.WorkWatts >= LeastTold).Select(line => line.Words).DefaultIfEmpty(lines.First().Words)]);
        foreach (var content in _bay.Contents)
            if (content.MostHeat is { } most)
                yield return new(content.Part, (double)(content.LeastHeat?.Watts ?? 0), (double)most.Watts, (double)most.Watts, ["the machine file"]);
    }

    private IEnumerable<BayPart> PartsOf()
    {
        foreach (var part in Inside)
            if (_contents.GetValueOrDefault(part.Designation)?.AirLimit is { } limit)
                yield return new(part.Designation, AboveAir(part.Designation), limit.DegreesCelsius, "the machine file");
            else if (part.Type.Ratings.FullUpTo is { } full)
                yield return DeratingOf(part) is { } derating
                    ? new(part.Designation, AboveAir(part.Designation), full.DegreesCelsius, $"its type gives full current up to {full.DegreesCelsius.ToString("0", CultureInfo.InvariantCulture)} °C, and less above") { Derating = derating }
                    : new(part.Designation, AboveAir(part.Designation), full.DegreesCelsius, "its type");
    }

    private Derating? DeratingOf(Part part) =>
        part.Type.Ratings.Derating is { } share && _losses.Supplies.Where(supply => supply.Part == part.Designation).ToArray() is { Length: > 0 } supplies
            ? new(share.DecimalFractions, supplies.Max(supply => AskedMore * supply.WorkAmperes / supply.LimitAmperes))
            : null;

    private IEnumerable<BayPart> SwitchParts() =>
        from pair in Switches
        where Inside.Any(part => part.Designation == pair.Switch.Part) && _contents.GetValueOrDefault(pair.Switch.Part)?.AirLimit is null
        select new BayPart(pair.Switch.Part, AboveAir(pair.Switch.Part), pair.Sink.BearsAirUpTo(pair.Switch.JunctionCelsius), "its junction's limit, on its heat sink");
}
