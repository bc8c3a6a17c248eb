using System.Globalization;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Benchmarks;

/// <summary>Machines of any size for measuring: zones of one supply, one controller and what hangs on it, chained by mains and protective earth.</summary>
/// <remarks>The same number of terminals always gives the same machine. Parts are of the repository's catalogue.</remarks>
public sealed class GeneratedMachine
{
    private const int Motors = 7;
    private const int Fans = 5;
    private const int Sensors = 4;
    private const int Stops = 3;

    private readonly Catalogue _catalogue;
    private readonly List<Part> _parts = [];
    private readonly List<Conductor> _conductors = [];
    private readonly Dictionary<string, int> _numberOf = [];

    private GeneratedMachine(Catalogue catalogue) => _catalogue = catalogue;

    /// <summary>A machine with at least a number of terminals, and less than one zone more.</summary>
    public static MachineDesign Of(Catalogue catalogue, int terminals)
    {
        var draft = new GeneratedMachine(catalogue);
        var inlet = draft.Part("mains-inlet-fused", "rear panel");
        var before = ($"{inlet}.L", $"{inlet}.N", $"{inlet}.PE");
        for (var zone = 1; draft.TerminalCount < terminals; zone++)
            before = draft.Zone($"zone {zone.ToString(CultureInfo.InvariantCulture)}", before);
        return new MachineDesign(
            string.Create(CultureInfo.InvariantCulture, $"Generated machine of {draft.TerminalCount} terminals"),
            "Zones of a supply, a controller, heaters, motors, fans, switches and sensors, chained by mains and protective earth.",
            new MainsSupply(ElectricPotential.FromVolts(230), Frequency.FromHertz(50), SystemEarthing.TnS),
            draft._parts.ToValueList(),
            draft._conductors.ToValueList(),
            []);
    }

    private int TerminalCount => _parts.Sum(part => part.Type.Terminals.Count);

    private (string Line, string Neutral, string Earth) Zone(string place, (string Line, string Neutral, string Earth) before)
    {
        var (line, neutral, earth) = (Part("lever-terminal-5", place), Part("lever-terminal-5", place), Part("earth-bar-12", place));
        Wire(before.Line, $"{line}.1", 1.5, ConductorColour.Brown);
        Wire(before.Neutral, $"{neutral}.1", 1.5, ConductorColour.Blue);
        Wire(before.Earth, $"{earth}.1", 2.5, ConductorColour.GreenYellow);
        var supply = Part("supply-24-350", place);
        Wire($"{line}.2", $"{supply}.L", 1, ConductorColour.Brown);
        Wire($"{neutral}.2", $"{supply}.N", 1, ConductorColour.Blue);
        Wire($"{earth}.2", $"{supply}.PE", 1.5, ConductorColour.GreenYellow);
        var frame = Part("metal-frame", place);
        Wire($"{earth}.3", $"{frame}.PE", 2.5, ConductorColour.GreenYellow);
        var (fuses, zero) = (Part("fuse-block-6", place), Part("zero-volt-bar-16", place));
        Wire($"{supply}.V+1", $"{fuses}.IN", 2.5, ConductorColour.Red);
        Wire($"{supply}.V-1", $"{zero}.1", 2.5, ConductorColour.Black);
        Wire($"{zero}.16", $"{earth}.4", 1.5, ConductorColour.GreenYellow);
        var controller = Controller(place, fuses, zero);
        MainsHeater(place, line, neutral, earth, controller);
        return ($"{line}.5", $"{neutral}.5", $"{earth}.12");
    }

    private string Controller(string place, string fuses, string zero)
    {
        var (stop, controller) = (Part("emergency-stop-2", place), Part("motion-controller-7", place, ("FAN-BANK-1", "24 V"), ("FAN-BANK-2", "12 V"), ("BUS-END", "fitted")));
        Wire($"{fuses}.1", $"{stop}.11", 1.5, ConductorColour.Red);
        Wire($"{stop}.12", $"{controller}.VP+", 1.5, ConductorColour.Red);
        Wire($"{zero}.2", $"{controller}.VP-", 1.5, ConductorColour.Black);
        Wire($"{fuses}.2", $"{controller}.VL+", 1, ConductorColour.Red);
        Wire($"{zero}.3", $"{controller}.VL-", 1, ConductorColour.Black);
        for (var motor = 0; motor < Motors; motor++)
        {
            var at = Part(motor < 4 ? "stepper-42-40" : "stepper-42-48", place);
            foreach (var (end, colour) in new[] { ("1A", ConductorColour.Black), ("1B", ConductorColour.White), ("2A", ConductorColour.Red), ("2B", ConductorColour.Grey) })
                Wire($"{controller}.M{motor}-{end}", $"{at}.{end}", 0.34, colour);
        }

        for (var fan = 0; fan < Fans; fan++)
            Pair(controller, $"FAN{fan}+", $"FAN{fan}-", Part(fan < 3 ? "fan-24-60" : "fan-12-120", place), "+", "-", 0.22);
        for (var heater = 0; heater < 2; heater++)
            Pair(controller, $"HEAT{heater}+", $"HEAT{heater}-", Part("cartridge-heater-24-60", place), "1", "2", 0.75);
        for (var sensor = 0; sensor < Sensors - 1; sensor++)
            Pair(controller, $"TEMP{sensor}-S", $"TEMP{sensor}-0V", Part("ntc-100k", place), "1", "2", 0.14);
        for (var at = 0; at < Stops; at++)
            Pair(controller, $"STOP{at}-S", $"STOP{at}-0V", Part("micro-switch", place), "NC", "C", 0.25);
        for (var at = Stops; at < Stops + 2; at++)
        {
            var sensor = Part("optical-sensor", place);
            Pair(controller, $"STOP{at}-V", $"STOP{at}-0V", sensor, "V", "0V", 0.25);
            Wire($"{controller}.STOP{at}-S", $"{sensor}.S", 0.25, ConductorColour.White);
        }

        return controller;
    }

    private void MainsHeater(string place, string line, string neutral, string earth, string controller)
    {
        var (breaker, relay, cutOff, heater) =
            (Part("circuit-breaker-6", place), Part("solid-state-relay-25", place), Part("thermal-cut-off", place), Part("mains-silicone-heater", place));
        Wire($"{line}.3", $"{breaker}.1", 1, ConductorColour.Brown);
        Wire($"{breaker}.2", $"{relay}.1", 1, ConductorColour.Brown);
        Wire($"{relay}.2", $"{cutOff}.1", 1, ConductorColour.Brown);
        Wire($"{cutOff}.2", $"{heater}.L", 0.75, ConductorColour.Brown);
        Wire($"{neutral}.3", $"{heater}.N", 1, ConductorColour.Blue);
        Wire($"{earth}.5", $"{heater}.PE", 1.5, ConductorColour.GreenYellow);
        Wire($"{earth}.6", $"{relay}.BASE", 1.5, ConductorColour.GreenYellow);
        Pair(controller, "RLY+", "RLY-", relay, "3", "4", 0.34);
        Pair(controller, $"TEMP{Sensors - 1}-S", $"TEMP{Sensors - 1}-0V", heater, "T1", "T2", 0.22);
    }

    private void Pair(string from, string fromPlus, string fromMinus, string to, string toPlus, string toMinus, double squareMillimetres)
    {
        Wire($"{from}.{fromPlus}", $"{to}.{toPlus}", squareMillimetres, ConductorColour.Red);
        Wire($"{from}.{fromMinus}", $"{to}.{toMinus}", squareMillimetres, ConductorColour.Black);
    }

    private string Part(string type, string place, params (string Jumper, string Position)[] jumpers)
    {
        var found = _catalogue.FindType(type) ?? throw new ArgumentException("The catalogue lacks this part type.", nameof(type));
        var number = _numberOf[found.ClassLetter] = _numberOf.GetValueOrDefault(found.ClassLetter) + 1;
        var designation = found.ClassLetter + number.ToString(CultureInfo.InvariantCulture);
        _parts.Add(new Part(designation, found.Name, found, place, jumpers.Select(jumper => new JumperSetting(jumper.Jumper, jumper.Position)).ToValueList(), []));
        return designation;
    }

    // Lengths repeat after eleven conductors, so that neighbours differ.
    private void Wire(string from, string to, double squareMillimetres, ConductorColour colour) => _conductors.Add(new Conductor(
        "W" + (_conductors.Count + 1).ToString(CultureInfo.InvariantCulture),
        TerminalReference.TryParse(from)!.Value,
        TerminalReference.TryParse(to)!.Value,
        Area.FromSquareMillimeters(squareMillimetres),
        colour,
        Length.FromMillimeters(200 + (90 * (_conductors.Count % 11))),
        []));
}
