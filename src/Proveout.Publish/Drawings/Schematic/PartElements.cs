using System.Globalization;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Publish.Drawings;

/// <summary>Reads from the circuit inside a part which symbols stand between its terminals. Boards and supplies are boxes and have none.</summary>
internal static class PartElements
{
    private const string BoxLetters = "ATX";

    // A part with more terminals than a lamp or fan has is a box, whatever it takes in.
    private const int MostTerminalsOfALoad = 3;
    private const double LeastOhmsOfAnElement = 0.6;

    /// <summary>Both terminals of the coil that moves the part's own contacts; null when it has none.</summary>
    public static Drive? CoilOf(Part part) => part.Type.Circuit.OfType<Drive>().FirstOrDefault();

    /// <summary>What is drawn; each pair of terminals once.</summary>
    public static IReadOnlyList<PartElement> Of(Part part)
    {
        if (BoxLetters.Contains(part.Type.ClassLetter, StringComparison.Ordinal))
            return [];
        return part.Type.Circuit.Concat(Series(part.Type))
            .Where(element => part.Type.FindTerminal(element.A) is not null && part.Type.FindTerminal(element.B) is not null)
            .Select(element => (Element: element, Symbol: SymbolOf(part.Type, element)))
            .Where(pair => pair.Symbol != Symbol.None)
            .OrderBy(pair => pair.Element is Drive ? 0 : 1)
            .DistinctBy(pair => string.CompareOrdinal(pair.Element.A, pair.Element.B) < 0 ? (pair.Element.A, pair.Element.B) : (pair.Element.B, pair.Element.A))
            .Select(pair => new PartElement(pair.Symbol, pair.Element.A, pair.Element.B, ValueOf(pair.Element)))
            .ToList();
    }

    /// <summary>A fuse and a contact that follow each other inside a part, such as those of a circuit-breaker, are one symbol: that of the fuse.</summary>
    private static IEnumerable<CircuitElement> Series(PartType type)
    {
        var paths = type.Circuit.Where(element => element is Fuse or Proveout.Engine.Machine.Contact).ToList();
        foreach (var node in paths.SelectMany(path => new[] { path.A, path.B }).Where(node => type.FindTerminal(node) is null).Distinct())
            if (paths.FindAll(path => path.A == node || path.B == node) is [var first, var second] && (first as Fuse ?? second as Fuse) is { } fuse)
                yield return fuse with { A = Other(first, node), B = Other(second, node) };

        static string Other(CircuitElement path, string node) => path.A == node ? path.B : path.A;
    }

    private static Symbol SymbolOf(PartType type, CircuitElement element) => element switch
    {
        Drive => Symbol.Coil,
        Fuse { Curve: FuseCurve.BreakerB or FuseCurve.BreakerC } => Symbol.Breaker,
        Fuse { Curve: FuseCurve.Thermal } => Symbol.ThermalCutOff,
        Fuse => Symbol.Fuse,
        Proveout.Engine.Machine.Contact contact => IsClosedAtRest(type, contact) ? Symbol.OpeningContact : Symbol.ClosingContact,
        SwitchedPath => Symbol.SolidState,
        Resistor { Value.Nominal.Ohms: > LeastOhmsOfAnElement } resistor => OfResistor(type, resistor),
        Consumer when type.ClassLetter is "P" or "E" && type.Terminals.Count <= MostTerminalsOfALoad => Symbol.Lamp,
        Consumer when type.ClassLetter == "G" && type.Terminals.Count <= MostTerminalsOfALoad => Symbol.Fan,
        Consumer when type.ClassLetter == "Q" => Symbol.Diode,
        _ => Symbol.None,
    };

    private static Symbol OfResistor(PartType type, Resistor resistor) => type.ClassLetter switch
    {
        "B" => Symbol.Thermistor,
        "E" => type.FindTerminal(resistor.A)!.Role == TerminalRole.Signal ? Symbol.Thermistor : Symbol.Heater,
        "Q" => Symbol.Coil,
        "R" => Symbol.Resistor,
        _ => Symbol.None,
    };

    // A switch that a person leaves on is drawn open, as the machine lies dead; so is any contact of a part with no spring behind it.
    private static bool IsClosedAtRest(PartType type, Proveout.Engine.Machine.Contact contact) =>
        type.Controls.FirstOrDefault(control => control.Name == contact.Control) is { } control
        && contact.ClosedAt.Contains(control.Rest)
        && !control.Positions.Contains("off");

    private static string ValueOf(CircuitElement element) => element switch
    {
        Fuse { Rating: { } rating, Curve: FuseCurve.BreakerB } => "B " + Of(rating),
        Fuse { Rating: { } rating, Curve: FuseCurve.BreakerC } => "C " + Of(rating),
        Fuse { Rating: { } rating } => Of(rating),
        _ => "",
    };

    private static string Of(ElectricCurrent current) => string.Create(CultureInfo.InvariantCulture, $"{current.Amperes:0.###} A");
}
