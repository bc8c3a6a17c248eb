using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How bays and their ways of air stand in a file.</summary>
internal static class BayShapes
{
    private const int MostBends = 20;
    private const int MostInSeries = 4;
    private const double MostTurns = 100_000;

    private static readonly NameShape PartName = new(NameRule.Mark("part"));

    private static readonly WordShape<BayFace> Face = new(
        "face of a bay",
        (BayFace.Front, "front"), (BayFace.Back, "back"), (BayFace.Left, "left"), (BayFace.Right, "right"), (BayFace.Top, "top"), (BayFace.Bottom, "bottom"));

    private static readonly WordShape<WallMaterial> Material = new(
        "material of a wall", (WallMaterial.Steel, "steel"), (WallMaterial.Aluminium, "aluminium"), (WallMaterial.Plastic, "plastic"), (WallMaterial.Wood, "wood"));

    private static readonly WordShape<bool> Way = new("way to blow", (false, "in"), (true, "out"));

    private static readonly RecordShape<BayWall> Wall = new(
        "wall",
        [
            Key<BayWall>.Needed("material", "What it is made of.", Material, wall => wall.Material),
            Key<BayWall>.Needed("thickness", "How thick it is.", Shapes.Length, wall => wall.Thickness),
            Key<BayWall>.Optional("covered", "Faces that lie against something else.", new ListShape<BayFace>(Face), wall => wall.Covered, []),
        ],
        fields => new(fields.Get<WallMaterial>("material"), fields.Get<Length>("thickness"), fields.Get<ValueList<BayFace>>("covered")));

    private static readonly RecordShape<BayFilter> Filter = new(
        "filter",
        [
            Key<BayFilter>.Needed("flow", "Flow at which its pressures are given.", Shapes.Flow, filter => filter.Flow),
            Key<BayFilter>.Needed("clean", "Pressure that it takes when new.", Shapes.AirPressure, filter => filter.Clean),
            Key<BayFilter>.Needed("loaded", "Pressure at which it is to be changed.", Shapes.AirPressure, filter => filter.Loaded),
        ],
        fields => new(fields.Get<VolumeFlow>("flow"), fields.Get<Pressure>("clean"), fields.Get<Pressure>("loaded")));

    private static readonly RecordShape<FanPoint> Point = new(
        "point of a fan's curve",
        [
            Key<FanPoint>.Needed("flow", "Flow.", Shapes.Flow, point => point.Flow),
            Key<FanPoint>.Needed("pressure", "Pressure that it makes at that flow.", Shapes.AirPressure, point => point.Pressure),
        ],
        fields => new(fields.Get<VolumeFlow>("flow"), fields.Get<Pressure>("pressure")));

    private static readonly RecordShape<BayFan> Fan = new(
        "fan",
        [
            Key<BayFan>.Needed("part", "Designation of the fan.", PartName, fan => fan.Part),
            Key<BayFan>.Needed("blows", "Which way it blows, seen from the bay.", Way, fan => fan.BlowsOut),
            Key<BayFan>.Needed("most-flow", "Flow without any pressure against it.", Shapes.Flow, fan => fan.MostFlow),
            Key<BayFan>.Needed("most-pressure", "Pressure without any flow.", Shapes.AirPressure, fan => fan.MostPressure),
            Key<BayFan>.Optional("points", "Points of its curve between both ends, by rising flow.", new ListShape<FanPoint>(Point), fan => fan.Points, []),
            Key<BayFan>.Optional("in-series", "How many of it stand one behind another.", new NumberShape("number of fans", MostInSeries, isWhole: true), fan => fan.InSeries, 1),
            Key<BayFan>.Optional("scatter", "By how much its speed may differ.", Shapes.AnyShare, fan => fan.Scatter),
            Key<BayFan>.Optional(
                "turns-a-minute", "Turns a minute that its speed signal shows.", new OptionalShape<double>(new NumberShape("number of turns a minute", MostTurns, isWhole: false)), fan => fan.TurnsAMinute),
        ],
        fields => new(fields.Text("part"), fields.Get<bool>("blows"), fields.Get<VolumeFlow>("most-flow"), fields.Get<Pressure>("most-pressure"))
        {
            Points = fields.Get<ValueList<FanPoint>>("points"),
            InSeries = (int)fields.Get<double>("in-series"),
            Scatter = fields.Get<Ratio?>("scatter"),
            TurnsAMinute = fields.Get<double?>("turns-a-minute"),
        });

    private static readonly RecordShape<BayOpening> Opening = new(
        "opening",
        [
            Key<BayOpening>.Needed("size", "Its width and height.", LayoutShapes.Size, opening => opening.Size),
            Key<BayOpening>.Optional("open", "Share of its area that is free.", Shapes.AnyShare, opening => opening.Open),
            Key<BayOpening>.Optional("bends", "Sharp bends of a right angle on the way.", new NumberShape("number of bends", MostBends, isWhole: true), opening => opening.Bends, 0),
            Key<BayOpening>.Optional("filter", "Its filter.", Filter!, opening => opening.Filter),
            Key<BayOpening>.Optional("fan", "Its fan.", Fan!, opening => opening.Fan),
        ],
        fields => new(fields.Name, fields.Get<Outline>("size"))
        {
            Open = fields.Get<Ratio?>("open"),
            Bends = (int)fields.Get<double>("bends"),
            Filter = fields.Get<BayFilter?>("filter"),
            Fan = fields.Get<BayFan?>("fan"),
        });

    private static readonly RecordShape<BayContent> Content = new(
        "part in a bay",
        [
            Key<BayContent>.Optional("least-heat", "Least heat that it gives off at rest.", Shapes.AnyPower, content => content.LeastHeat),
            Key<BayContent>.Optional("most-heat", "Most heat that it gives off.", Shapes.AnyPower, content => content.MostHeat),
            Key<BayContent>.Optional("air-limit", "Temperature that the air at it may have.", Shapes.AnyTemperature, content => content.AirLimit),
            Key<BayContent>.Optional("above-air", "By how much the air at it is warmer than the air that leaves the bay.", Shapes.AnyRise, content => content.AboveAir),
        ],
        fields => new(fields.Name)
        {
            LeastHeat = fields.Get<Power?>("least-heat"),
            MostHeat = fields.Get<Power?>("most-heat"),
            AirLimit = fields.Get<Temperature?>("air-limit"),
            AboveAir = fields.Get<TemperatureDelta?>("above-air"),
        });

    private static readonly RecordShape<Bay> Body = new(
        "bay",
        [
            Key<Bay>.Needed("inside", "Width, height and depth inside, as one stands before it.", LayoutShapes.Size, bay => bay.Inside),
            Key<Bay>.Optional("surface", "The surface whose parts are in it.", new NameShape(NameRule.Mark("surface")), bay => bay.Surface, ""),
            Key<Bay>.Optional("parts", "Further parts that are in it.", new ListShape<string>(PartName), bay => bay.Parts, []),
            Key<Bay>.Optional("wall", "What its walls are.", Wall!, bay => bay.Wall),
            Key<Bay>.Optional("room", "Temperature of the room's air at its hottest.", Shapes.AnyTemperature, bay => bay.Room),
            Key<Bay>.Optional("altitude", "Height above the sea.", Shapes.AnyLength, bay => bay.Altitude),
            Key<Bay>.Optional("openings", "Its ways of air, by name.", new NamedShape<BayOpening>(NameRule.Mark("opening"), Opening, opening => opening.Name), bay => bay.Openings, []),
            Key<Bay>.Optional("contents", "What is known of single parts in it, by designation.", new NamedShape<BayContent>(NameRule.Mark("part"), Content, content => content.Part), bay => bay.Contents, []),
        ],
        fields => new(fields.Name, fields.Get<Outline>("inside"), fields.Get<ValueList<BayOpening>>("openings"))
        {
            Surface = fields.Text("surface"),
            Parts = fields.Get<ValueList<string>>("parts"),
            Wall = fields.Get<BayWall?>("wall"),
            Room = fields.Get<Temperature?>("room"),
            Altitude = fields.Get<Length?>("altitude"),
            Contents = fields.Get<ValueList<BayContent>>("contents"),
        });

    public static readonly NamedShape<Bay> Bays = new(NameRule.Mark("bay"), Body, bay => bay.Name);
}
