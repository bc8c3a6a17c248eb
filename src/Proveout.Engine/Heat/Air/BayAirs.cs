using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Turns what a machine file says of a bay into the model of its air.</summary>
public static class BayAirs
{
    // A hole with sharp edges between two rooms, over the dynamic pressure in it: (1 + 0.707)² = 2.9 by I. E. Idelchik, Handbook of Hydraulic Resistance, thin orifices in a wall (from memory),
    // 2.7 by the discharge coefficient of 0.61; slots of a printed or punched grille differ.
    private static readonly Between HoleCoefficient = new(2.4, 3.2);

    // A sharp bend of a right angle: 1.1 to 1.3, Idelchik and common tables (from memory).
    private static readonly Between BendCoefficient = new(1.1, 1.3);

    // A fan guides the air on one side: only about the exit is lost there beside its curve, which is measured blowing freely; common practice.
    private static readonly Between FanHoleCoefficient = new(0.3, 1.5);

    private static readonly Between AreaShare = new(0.95, 1.05);
    // Mats differ by a fifth from sheet to sheet; common practice.
    private const double NewFilterShare = 0.2;
    private const double UsualScatter = 0.1;
    private const double UsualRoom = 30;
    private const double ColdRoom = 15;

    /// <summary>The air of a bay.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="bay">A bay of it that was read without a problem.</param>
    /// <param name="restWatts">Heat given off in it at rest.</param>
    /// <param name="workWatts">Most heat given off in it.</param>
    /// <param name="parts">Parts that the air may become too warm for.</param>
    public static BayAir Of(MachineDesign design, Bay bay, Between restWatts, double workWatts, IReadOnlyList<BayPart> parts)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(bay);
        var hottest = bay.Room?.DegreesCelsius ?? UsualRoom;
        return new(
            bay.Name,
            [.. bay.Openings.Select(opening => OpeningOf(design, opening))],
            new BayWalls(bay.Inside.Width.Meters, bay.Inside.Height.Meters, bay.Inside.Depth!.Value.Meters, bay.Wall),
            restWatts,
            workWatts,
            new Between(Math.Min(ColdRoom, hottest), hottest),
            bay.Altitude?.Meters ?? 0,
            parts)
        {
            HoldsMains = BayParts.Of(design, bay).Any(part => part.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.Line)),
        };
    }

    // What its type says that it takes; null when it says nothing.
    private static double? AmperesOf(MachineDesign design, string part) =>
        design.FindPart(part)?.Type.Circuit.OfType<Consumer>().FirstOrDefault() is { } consumer ? consumer.Current.Amperes : null;

    private static AirOpening OpeningOf(MachineDesign design, BayOpening opening)
    {
        var area = opening.Size.Width.Meters * opening.Size.Height.Meters * (opening.Open?.DecimalFractions ?? 1);
        var hole = opening.Fan is null ? HoleCoefficient : FanHoleCoefficient;
        return new(opening.Name, AreaShare.Times(area), new(hole.Low + (opening.Bends * BendCoefficient.Low), hole.High + (opening.Bends * BendCoefficient.High)))
        {
            Filter = opening.Filter is { } filter ? new AirFilter(filter.Flow.CubicMetersPerSecond, Between.Around(filter.Clean.Pascals, NewFilterShare), filter.Loaded.Pascals) : null,
            Fan = opening.Fan is { } fan ? FanOf(design, fan) : null,
        };
    }

    private static OpeningFan FanOf(MachineDesign design, BayFan fan)
    {
        (double Flow, double Pascals)[] points = [.. fan.Points.Select(point => (point.Flow.CubicMetersPerSecond, point.Pressure.Pascals))];
        var curve = FanCurve.Of(fan.MostPressure.Pascals, fan.MostFlow.CubicMetersPerSecond, points).InSeries(fan.InSeries);
        return new(curve, fan.BlowsOut, Between.Around(1, fan.Scatter?.DecimalFractions ?? UsualScatter))
        {
            Part = fan.Part,
            Amperes = AmperesOf(design, fan.Part),
            TurnsAMinute = fan.TurnsAMinute,
        };
    }
}
