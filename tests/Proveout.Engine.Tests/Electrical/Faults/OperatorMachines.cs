namespace Proveout.Engine.Tests.Electrical.Faults;

/// <summary>A board on which every kind of mistake can be made.</summary>
internal static class OperatorMachines
{
    public const string Board = """
        board:
          name: Board
          letter: A
          note: For a test.
          terminals:
            V: {role: positive}
            G: {role: zero-volt}
            O1: {role: output}
            O2: {role: output}
            S1: {role: signal}
            S2: {role: zero-volt}
            P1: {role: signal}
            P2: {role: zero-volt}
            I1: {role: signal}
            I2: {role: zero-volt}
            I3: {role: positive}
            C1: {role: output}
            C2: {role: output}
            C3: {role: output}
            C4: {role: output}
            H: {role: data}
            L: {role: data}
            U1: {role: positive}
            U2: {role: data}
            U3: {role: data}
            F: {role: positive}
          connectors:
            IN: {terminals: [V, G], family: screw-row, pluggable: false}
            OUT: {terminals: [O1, O2], family: plug-5.08, pluggable: true}
            SENSOR: {terminals: [S1, S2], family: lock-2.5, pluggable: true}
            SENSOR-2: {terminals: [P1, P2], family: lock-2.5, pluggable: true}
            END-STOP: {terminals: [I1, I2, I3], family: lock-2.5, pluggable: true}
            MOTOR: {terminals: [C1, C2, C3, C4], family: lock-2.5, pluggable: true}
            HEADER: {terminals: [H, L], family: header-2.54, pluggable: true}
            DATA: {terminals: [U1, U2, U3], family: data-port, pluggable: true}
            FAN: {terminals: [F], family: screw-row, pluggable: false}
          jumpers:
            BANK: {common: F, positions: {5 V: low, 24 V: V}}
            END: {common: L, positions: {fitted: end-post}}
          circuit:
            rail: {kind: unpredictable, between: [V, G], value: 2 kohm .. 50 kohm}
            five: {kind: unpredictable, between: [low, G], value: 1 kohm .. 10 kohm}
            feed: {kind: resistor, between: [V, O1], value: 2 mohm .. 10 mohm}
            off: {kind: unpredictable, between: [O2, G], value: 20 kohm .. open}
            body: {kind: diode, between: [G, O2], forward: 0.4 V .. 0.7 V}
            pull-1: {kind: resistor, between: [V, S1], value: 4.7 kohm +-1 %}
            zero-1: {kind: resistor, between: [S2, G], value: 2 mohm .. 10 mohm}
            pull-2: {kind: resistor, between: [V, P1], value: 4.7 kohm +-1 %}
            zero-2: {kind: resistor, between: [P2, G], value: 2 mohm .. 10 mohm}
            input: {kind: unpredictable, between: [I1, G], value: 5 kohm .. open}
            zero-3: {kind: resistor, between: [I2, G], value: 2 mohm .. 10 mohm}
            supply-3: {kind: resistor, between: [I3, V], value: 2 mohm .. 10 mohm}
            pair: {kind: unpredictable, between: [H, L], value: 20 kohm .. open}
            end: {kind: resistor, between: [H, end-post], value: 120 ohm +-1 %}
            bus: {kind: unpredictable, between: [U1, G], value: 1 kohm .. 10 kohm}
            data: {kind: unpredictable, between: [U2, U3], value: 20 kohm .. open}
        """;
}
