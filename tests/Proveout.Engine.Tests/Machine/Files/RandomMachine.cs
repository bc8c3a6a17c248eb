using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Valid machines made at random, with awkward names, texts and numbers.</summary>
internal sealed class RandomMachine(int seed)
{
    private static readonly string[] AwkwardNames =
        ["1", "L", "0V", "VIN+", "HEAT0-", "on", "true", "null", "~", "a: b", "#1", "x, y", "[z]", "{q}", "5 V", "é", "\"", "'", "\\", "- a", "a # b", "*", "&x", "1e3", "2024-01-01", "%", "@", "|", "日"];

    private static readonly string[] AwkwardTexts =
        ["Plain.", "Two\nlines", "tab\there", "colon: here", "# hash", "\"quoted\"", "60 °C", "no", "a\\b", "{", "-", "日本", "x\u2028x", "a\n\n  b"];

    private readonly Random _random = new(seed);

    public MachineDesign Design()
    {
        var types = Many(1, 4, Type);
        var surfaces = Many(0, 2, number => new Surface("s" + Name(number), Size(), Maybe(Distance), TextOrNone()));
        var rails = surfaces.Select((surface, number) => Rail("r" + Name(number), surface.Name)).ToValueList();
        var routes = Many(0, 3, number => Route(Name(number), surfaces));
        var parts = Many(1, 5, number => Part(number, Pick(types), surfaces, rails));
        var terminals = parts.SelectMany(part => part.Type.Terminals.Select(terminal => new TerminalReference(part.Designation, terminal.Name))).ToList();
        var mains = Chance() ? new MainsSupply(ElectricPotential.FromVolts(Number()), Frequency.FromHertz(Number()), Any<SystemEarthing>()) { ResidualCurrent = Chance() ? ElectricCurrent.FromAmperes(Number()) : null } : null;
        return new(Text(), TextOrNone(), mains, parts, Many(0, 6, number => Conductor(number, terminals, routes)), routes)
        {
            Surfaces = surfaces,
            Rails = rails,
            Mistakes = Chance() ? [] : MistakeKinds.All.Where(_ => _random.Next(9) == 0).Select(kind => new MistakeSetting(kind, Maybe(() => Math.Pow(_random.NextDouble(), 3) + 1e-9))).ToValueList(),
        };
    }

    public Catalogue SomeOf(MachineDesign design) =>
        new(design.Parts.Select(part => part.Type).Distinct().Where(_ => Chance()).ToValueList());

    // All sources of a type have one voltage, for some of them lie in parallel.
    private double _sourceVolts;

    private PartType Type(int number)
    {
        _sourceVolts = Number();
        var terminals = Many(2, 4, at => new Terminal(Name(at), Any<TerminalRole>(), Maybe(() => ElectricPotential.FromVolts(Number())), Maybe(() => ElectricCurrent.FromAmperes(Number())), Chance()));
        var names = terminals.Select(terminal => terminal.Name).ToArray();
        var controls = Many(1, 2, at => Control(Name(at)));
        var connectors = Chance() ? ValueList.Create([new Connector(Name(0), [names[0], names[1]], Text(), Chance())]) : [];
        var jumpers = Many(0, 2, at => new Jumper(Name(at), names[0], Many(1, 3, position => new JumperPosition(Name(position), names[1]))));
        // Inner nodes come in pairs of uses, so that none is loose.
        var circuit = Many(0, 5, at => Element(Name(2 * at), names[0], "inner", controls)).SelectMany((element, at) => new[] { element, Element(Name((2 * at) + 1), "inner", names[1], controls) });
        return new($"type-{number}", Text(), Pick("A", "X", "KF"), TextOrNone(), Chance(), terminals, connectors, controls, jumpers, circuit.ToValueList())
        {
            Size = Maybe(Size),
            Clearances = Chance() ? new(Maybe(Distance), null, Maybe(Distance), Distance(), Maybe(Distance)) : null,
            Sides = Chance() ? TerminalSides.None : new([names[0]], [], [names[1]], []),
        };
    }

    private Route Route(string name, ValueList<Surface> surfaces) => new(name, Any<RouteKind>(), TextOrNone())
    {
        Inside = Maybe(Size),
        On = surfaces.Count == 0 ? "" : surfaces[0].Name,
        Path = surfaces.Count == 0 ? [] : Many(0, 3, _ => Point()),
        BendRadius = Maybe(Distance),
    };

    private Rail Rail(string name, string surface)
    {
        var start = Point();
        return new(name, surface, start, Chance() ? start with { Across = start.Across + Distance() } : start with { Up = start.Up + Distance() });
    }

    private Placement? Placement(ValueList<Surface> surfaces, ValueList<Rail> rails) => surfaces.Count == 0 || Chance()
        ? null
        : Chance() ? new(Pick(surfaces).Name, Point(), null, Any<QuarterTurn>()) : new(Pick(rails).Name, null, Distance(), Any<QuarterTurn>());

    private Outline Size() => new(Distance(), Distance(), Maybe(Distance));

    private PlanePoint Point() => new(Distance(), Distance());

    // Whole quarters, so that sums are as exact as what is written.
    private Length Distance() => Length.FromMillimeters(_random.Next(1, 100_000) / 4.0);

    private CircuitElement Element(string name, string a, string b, ValueList<Control> controls)
    {
        var control = Pick(controls);
        return _random.Next(8) switch
        {
            0 => new Resistor(name, a, b, Band()),
            1 => new Fuse(name, a, b, Band(), Maybe(() => ElectricCurrent.FromAmperes(Number()))),
            2 => new Contact(name, a, b, control.Name, [Pick(control.Positions)], Band()),
            3 => Diode(name, a, b, Number(), Number()),
            4 => new Capacitor(name, a, b, ElectricCapacitance.FromFarads(Number() * 1e-6)),
            5 => new Source(name, a, b, ElectricPotential.FromVolts(_sourceVolts), Maybe(() => ElectricCurrent.FromAmperes(Number()))),
            6 => new Unpredictable(name, a, b, Band()),
            _ => new Insulation(name, a, b, ElectricResistance.FromOhms(Number() * 1e6)),
        };
    }

    private static Diode Diode(string name, string a, string b, double one, double other) =>
        new(name, a, b, ElectricPotential.FromVolts(Math.Min(one, other)), ElectricPotential.FromVolts(Math.Max(one, other)));

    private Control Control(string name)
    {
        var positions = Many(1, 3, Name);
        return new(name, positions, Pick(positions));
    }

    private Part Part(int number, PartType type, ValueList<Surface> surfaces, ValueList<Rail> rails)
    {
        var jumpers = type.Jumpers.Where(_ => Chance()).Select(jumper => new JumperSetting(jumper.Name, Pick(jumper.Positions).Name));
        var values = type.Circuit.Where(element => element is Resistor or Fuse or Contact or Unpredictable && Chance()).Select(element => new ElementValue(element.Name, Band()));
        return new($"A{number}", Text(), type, TextOrNone(), jumpers.ToValueList(), values.ToValueList())
        {
            Placement = Placement(surfaces, rails),
            OwnSize = type.Size is null ? Size() : Maybe(Size),
            Reach = Maybe(Distance),
            Slack = Maybe(Distance),
        };
    }

    private Conductor Conductor(int number, List<TerminalReference> terminals, ValueList<Route> routes)
    {
        var from = Pick(terminals);
        var section = Chance() ? Number() : WireGauge.SquareMillimetres(_random.Next(57));
        return new(
            $"W{number}",
            from,
            Pick([.. terminals.Where(terminal => terminal != from)]),
            Area.FromSquareMillimeters(section),
            Any<ConductorColour>(),
            Length.FromMillimeters(Number()),
            routes.Where(_ => Chance()).Select(route => route.Name).ToValueList());
    }

    private ResistanceBand Band()
    {
        double[] limits = [Number(), Number(), Number()];
        Array.Sort(limits);
        return _random.Next(5) switch
        {
            0 => ResistanceBand.FromOhms(limits[0], limits[2]),
            1 => ResistanceBand.FromOhms(limits[0], limits[1], limits[2]),
            2 => ResistanceBand.FromOhms(limits[0], limits[1], double.PositiveInfinity),
            3 => ResistanceBand.Around(ElectricResistance.FromOhms(limits[0]), _random.Next(100) / 100.0),
            _ => ResistanceBand.Around(ElectricResistance.FromOhms(limits[0]), _random.NextDouble()),
        };
    }

    // From a milli-unit to ten mega-units; round and odd numbers alike.
    private double Number()
    {
        var size = Math.Pow(10, _random.Next(-3, 8));
        return Chance() ? _random.Next(1, 100) * size : (_random.NextDouble() + 0.01) * size;
    }

    // The number keeps names of one list apart.
    private string Name(int number) => Chance() ? $"{Pick(AwkwardNames)}{number}" : number == 0 ? Pick(AwkwardNames) : $"n{number}";

    private string Text() => Pick(AwkwardTexts);

    private string TextOrNone() => Chance() ? Text() : "";

    private bool Chance() => _random.Next(2) == 0;

    private T Any<T>()
        where T : struct, Enum => Pick(Enum.GetValues<T>());

    private T? Maybe<T>(Func<T> make)
        where T : struct => Chance() ? make() : null;

    private T Pick<T>(params IReadOnlyList<T> items) => items[_random.Next(items.Count)];

    private ValueList<T> Many<T>(int least, int most, Func<int, T> make) => Enumerable.Range(0, _random.Next(least, most + 1)).Select(make).ToValueList();
}
