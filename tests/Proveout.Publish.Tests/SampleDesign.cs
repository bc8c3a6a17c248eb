using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Publish.Tests;

/// <summary>A small machine of our own invention with what drawings must cope with: plugs, long names, many terminals.</summary>
internal static class SampleDesign
{
    public static readonly string[] HeaterPins = ["HEAT0+", "HEAT0-"];

    public static MachineDesign Machine { get; } = new(
        "Small oven",
        "A box that keeps 60 °C.",
        null,
        [
            MakePart("X1", "Mains inlet", MakeType("inlet", ["L", "N", "PE", "L-OUT", "N-OUT"])),
            MakePart("K1", "Solid-state relay of the plate heater", MakeType("relay", ["1", "2", "3", "4"], new Connector("CONTROL", ["3", "4"], "plug-5.08", true))),
            MakePart("A1", "Motion controller", MakeType(
                "controller",
                ["VIN+", "VIN-", .. HeaterPins, "FAN-0+", "FAN-0-", "FAN-BANK-1-POSITIVE", "FAN-BANK-1-NEGATIVE", "TEMP0-A", "TEMP0-B", "STOP-X", "STOP-Y"],
                new Connector("HEATER-0", ["HEAT0+", "HEAT0-"], "plug-5.08", true),
                new Connector("FANS", ["FAN-0+", "FAN-0-", "FAN-BANK-1-POSITIVE", "FAN-BANK-1-NEGATIVE"], "plug-2.5", true))),
            MakePart("E1", "Plate heater", MakeType("heater", ["A", "B"])),
        ],
        [
            MakeConductor("W1", "X1.L-OUT", "K1.1", ConductorColour.Brown),
            MakeConductor("W2", "A1.HEAT0+", "K1.3", ConductorColour.Red),
            MakeConductor("W3", "A1.HEAT0-", "K1.4", ConductorColour.Black),
        ],
        []);

    public static Check MakeCheck(params CheckPoint[] points) => new(
        "resistance-a-b", "resistance", "all-apart", "Resistance of the plate heater", "Touch both.", points.ToValueList(), "Ω",
        new ReadingInterval(98, 114), "The element.", 20);

    public static PartType MakeType(string id, IEnumerable<string> terminals, params Connector[] connectors) => new(
        id, id, "A", "", false,
        terminals.Select(name => new Terminal(name, TerminalRole.Passive, null, null, true)).ToValueList(),
        connectors.ToValueList(), [], [], []);

    public static Part MakePart(string designation, string name, PartType type) => new(designation, name, type, "", [], []);

    private static Conductor MakeConductor(string id, string from, string to, ConductorColour colour) => new(
        id, TerminalReference.TryParse(from)!.Value, TerminalReference.TryParse(to)!.Value,
        Area.FromSquareMillimeters(0.75), colour, Length.FromMillimeters(350), []);
}
