using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>A small catalogue and machine that use every key of the format once.</summary>
internal static class Sample
{
    public const string CatalogueText = """
        format: proveout-parts 1
        types:
          inlet:
            name: Mains inlet with switch
            letter: X
            note: Common practice.
            exposed: true
            terminals:
              L: {role: line, voltage: 240 V, current: 10 A}
              N: {role: neutral, voltage: 240 V}
              PE: {role: protective-earth}
              L-OUT: {role: line, reachable: false}
            connectors:
              REAR: {terminals: [L, N], family: blade-6.3, pluggable: true}
            controls:
              main: {positions: [off, on], rest: on}
            circuit:
              switch: {kind: contact, between: [L, L-OUT], control: main, closed-at: [on], value: 5 mohm .. 100 mohm}
              protection: {kind: fuse, between: [N, inner], value: 10 mohm .. 50 mohm, rating: 6.3 A}
              track: {kind: resistor, between: [inner, PE], value: 1M0 +-5 %}
          board:
            name: Controller
            letter: A
            terminals:
              V+: {role: positive, voltage: 24 V}
              "0V": {role: zero-volt}
              FAN: {role: output}
            jumpers:
              FAN-BANK: {common: bank, positions: {24 V: V+, 12 V: mid}}
            circuit:
              body: {kind: diode, between: ["0V", FAN], forward: 0.4 V .. 0.8 V}
              link: {kind: resistor, between: [bank, FAN], value: 10 mohm +-50 %}
              buffer: {kind: capacitor, between: [V+, "0V"], value: 100 uF}
              rail: {kind: source, between: [mid, "0V"], voltage: 12 V, limit: 500 mA}
              port: {kind: unpredictable, between: [V+, FAN], value: 1 kohm .. open}
              barrier: {kind: insulation, between: [V+, FAN], at-least: 1 Mohm}
        """;

    public const string MachineText = """
        format: proveout-machine 1
        machine:
          name: Small oven
          summary: A box that keeps 60 °C.
          mains: {voltage: 230 V, frequency: 50 Hz, earthing: TN-S}
        types:
          plate:
            name: Heater
            letter: E
            terminals: {A: {role: passive}, B: {role: passive}}
            circuit:
              element: {kind: resistor, between: [A, B], value: 100 ohm +-10 %}
        parts:
          X1: {type: inlet, name: Mains inlet, place: rear panel}
          A1: {type: board, name: Controller, jumpers: {FAN-BANK: 24 V}}
          E1: {type: plate, name: Plate heater, values: {element: 105.8 ohm +-7 %}}
        routes:
          bay-duct: {kind: duct, note: Mains side.}
        conductors:
          W1: {from: X1.L-OUT, to: E1.A, section: 1.0 mm2, colour: brown, length: 350 mm, route: [bay-duct]}
          W2: {from: X1.N, to: E1.B, section: AWG 18, colour: blue, length: 0.4 m}
        mistakes: {bridge: off, poor-joint: 0.004}
        """;

    public static Catalogue Catalogue { get; } = CatalogueReader.Read([new("parts.yaml", CatalogueText)]).Value!;

    public static Outcome<MachineDesign> Read(string text) => MachineReader.Read([new("machine.yaml", text)], Catalogue);

    public static Outcome<Catalogue> ReadCatalogue(string text) => CatalogueReader.Read([new("parts.yaml", text)]);
}
