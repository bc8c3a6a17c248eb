using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Predicts the air in every bay of a machine.</summary>
public static class AirPrediction
{
    private const double CubicMetresAnHour = 3600;
    private const int CurvePoints = 40;

    // IEC 60204-1 clause 4.4.3: what the design review reckons with when the file says nothing.
    private const double ReviewCelsius = 40;

    /// <summary>The view of a machine; without bays when its file says nothing of them.</summary>
    public static AirView Of(MachineSummary machine, MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new(machine, [.. design.Bays.Select(bay => Of(design, bay))]);
    }

    private static BayView Of(MachineDesign design, Bay bay)
    {
        var inventory = new BayInventory(design, bay);
        var air = inventory.Air;
        var climate = new BayClimate(air);
        var flows = climate.Flows;
        return new(
            bay.Name,
            air.RoomCelsius.High,
            design.Review.Ambient?.DegreesCelsius ?? ReviewCelsius,
            inventory.Heat,
            (air.RestWatts.Low, air.RestWatts.High),
            air.WorkWatts,
            [.. inventory.NotKnown()],
            new(CubicMetresAnHour * flows.LeastThrough, CubicMetresAnHour * flows.MostThrough, CubicMetresAnHour * climate.FlowsInUse.LeastThrough),
            (flows.BayPascals.Low, flows.BayPascals.High),
            [.. air.Openings.Select(opening => WayOf(flows, opening))],
            new(climate.RestRise.Low, Finite(climate.RestRise.High), Finite(climate.WorkRise), Finite(new BayClimate(Still(air)).WorkRise)),
            [.. air.Parts.Select(part => WarmthOf(climate, part))],
            [.. inventory.Switches.Select(pair => WarmthOf(climate, inventory.AboveAir(pair.Switch.Part), pair))],
            CurvesOf(air, climate),
            TableOf(AirCampaign.Of(air)));
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static BayAir Still(BayAir air) =>
        air with { Openings = [.. air.Openings.Select(opening => opening.Fan is { } fan ? opening with { Fan = fan with { Stands = true } } : opening)] };

    private static BayWay WayOf(AirFlows flows, AirOpening opening) =>
        flows.Into(opening) is var into ? new(opening.Name, opening.Fan?.Part ?? "", CubicMetresAnHour * into.Low, CubicMetresAnHour * into.High) : null!;

    private static PartWarmth WarmthOf(BayClimate climate, BayPart part)
    {
        var hottest = climate.HottestAt(part);
        return new(
            part.Designation,
            part.AboveAirKelvin,
            Finite(hottest),
            part.BearsUpTo,
            part.Basis,
            part.Derating is null ? null : 100 * part.ShareAt(hottest),
            100 * part.Derating?.AskedShare,
            part.Bears(hottest));
    }

    private static SwitchWarmth WarmthOf(BayClimate climate, double aboveAir, (SwitchLoss Switch, SwitchOnSink Sink) pair)
    {
        var air = climate.HottestCelsius + aboveAir;
        var asked = pair.Sink.MostSinkToAir(pair.Switch.JunctionCelsius, air);
        return new(
            pair.Switch.Part,
            pair.Switch.Sink!.Name,
            pair.Switch.Watts,
            Finite(pair.Sink.SinkCelsius(air)),
            Finite(pair.Sink.BaseCelsius(air)),
            Finite(pair.Sink.JunctionCelsius(air)),
            pair.Switch.JunctionCelsius,
            asked > 0 ? Finite(asked) : null);
    }

    // Over half as much again as any fan makes by itself, so that both curves are seen to their ends.
    private static BayCurves CurvesOf(BayAir air, BayClimate climate)
    {
        bool[] ways = [.. air.Openings.Where(opening => opening.Fan is not null).Select(opening => opening.Fan!.BlowsOut).Distinct()];
        var most = 1.1 * air.Openings.Where(opening => opening.Fan is not null).Select(opening => opening.Fan!.Curve.MostPascals * opening.Fan.Speed.High * opening.Fan.Speed.High).DefaultIfEmpty(1).Max();
        var (from, to) = ways is [true] ? (-most, 0.0) : ways is [false] ? (0.0, most) : (-most, most);
        return new(ways is [var way] ? way : null, [.. Enumerable.Range(0, CurvePoints + 1).Select(at => PointAt(climate.Flows, from + ((to - from) * at / CurvePoints)))]);
    }

    private static BayCurvePoint PointAt(AirFlows flows, double pascals)
    {
        var (comes, goes) = (flows.ComesIn(pascals).Times(CubicMetresAnHour), flows.GoesOut(pascals).Times(CubicMetresAnHour));
        return new(pascals, comes.Low, comes.High, goes.Low, goes.High);
    }

    // Few builders have an air-speed meter: the plan does without, and says where one would help.
    private static MistakeTable TableOf(FaultDictionary dictionary)
    {
        bool IsCommon(int check) => dictionary.Checks[check].Kind != AirCampaign.AirSpeed;
        var plan = CheckPlan.Of(dictionary, mayUse: IsCommon);
        return new(
            dictionary.SetUps,
            [.. plan.Checks.Select(check => new ExpectedCheck(dictionary.Checks[check], CheckWords.Expected(dictionary.Checks[check])))],
            [.. dictionary.Faults.Index().OrderByDescending(fault => fault.Item.Severity).Select(fault => RowOf(fault.Index, fault.Item))]);

        MistakeRow RowOf(int index, Fault fault)
        {
            string[] caught = [.. plan.Checks.Where(check => dictionary.IsSurelyCaught(index, check)).Select(check => dictionary.Checks[check].Title)];
            var meter = caught.Length > 0 ? null : dictionary.ChecksThatCatch(index).Where(check => !IsCommon(check)).Select(check => dictionary.Checks[check]).FirstOrDefault();
            return new(meter is null ? fault : fault with { OtherEvidence = $"{fault.OtherEvidence}; an air-speed meter surely shows it ({meter.Title}: {CheckWords.Expected(meter)})" }, caught);
        }
    }
}
