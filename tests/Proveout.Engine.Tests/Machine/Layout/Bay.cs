using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>A small bay with a plate, a rail, ducts, and a chain that leaves it.</summary>
internal static class Bay
{
    public const string Text = """
        format: proveout-machine 1
        machine: {name: Small bay}
        types:
          block:
            name: Terminal block
            letter: X
            size: 20 x 60 x 50 mm
            free: {above: 10 mm}
            edges: {above: ["1", "2"], below: ["3"]}
            terminals: {"1": {role: passive}, "2": {role: passive}, "3": {role: passive}}
          motor:
            name: Motor
            letter: M
            terminals: {A: {role: winding}, B: {role: winding}}
        surfaces:
          plate: {size: 400 x 300 x 90 mm, slack: 50 mm}
        rails:
          upper: {on: plate, from: 20 x 200 mm, to: 380 x 200 mm}
        parts:
          X1: {type: block, name: First, mounted: {on: upper, along: 10 mm}}
          X2: {type: block, name: Second, mounted: {on: plate, at: 300 x 20 mm}}
          X3: {type: block, name: Third, mounted: {on: plate, at: 200 x 20 mm, turned: 90 deg}}
          M1: {type: motor, name: Motor, reach: 120 mm, slack: 0 mm}
        routes:
          top: {kind: duct, inside: 25 x 40 mm, on: plate, path: [20 x 260 mm, 380 x 260 mm]}
          side: {kind: duct, inside: 25 x 40 mm, on: plate, path: [380 x 260 mm, 380 x 10 mm]}
          chain: {kind: chain, inside: 18 x 18 mm, on: plate, path: [0 x 260 mm], length: 800 mm, bend-radius: 28 mm}
        conductors:
          W1: {from: X1.1, to: X2.2, section: 0.75 mm2, colour: brown, route: [top, side]}
          W2: {from: X1.2, to: M1.A, section: 0.34 mm2, colour: black, route: [top, chain]}
          W3: {from: M1.B, to: X1.2, section: 0.34 mm2, colour: white, route: [chain, top]}
          W4: {from: X2.3, to: X3.3, section: 0.75 mm2, colour: blue}
          W5: {from: X1.3, to: X3.1, section: 0.75 mm2, colour: red, length: 900 mm, route: [side]}
        """;

    public static MachineDesign Design => Sample.Read(Text).Value!;

    public static MachineLayout Layout => MachineLayout.Of(Design);
}
