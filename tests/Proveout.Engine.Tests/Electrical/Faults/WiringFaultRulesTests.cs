using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Faults;

/// <summary>A supply, a heater behind a plug, a fan bank with a jumper, a bonded plate: what can go wrong with them, and what catches it.</summary>
public sealed class WiringFaultRulesTests
{
    private const string Types = """
        supply:
          name: Supply
          letter: T
          note: For a test.
          terminals: {"+": {role: positive}, "-": {role: zero-volt}, PE: {role: protective-earth}}
          connectors: {ROW: {terminals: ["+", "-", PE], family: screws, pluggable: false}}
          circuit:
            output: {kind: unpredictable, between: ["+", "-"], value: 1 kohm .. 50 kohm}
        board:
          name: Board
          letter: A
          note: For a test.
          terminals:
            V: {role: positive}
            G: {role: zero-volt}
            H1: {role: output}
            H2: {role: output}
            S1: {role: signal}
            S2: {role: signal}
            F: {role: positive}
          connectors:
            IN: {terminals: [V, G], family: screws, pluggable: false}
            ONE: {terminals: [H1, H2], family: plug, pluggable: true}
            TWO: {terminals: [S1, S2], family: plug, pluggable: true}
            FAN: {terminals: [F], family: screws, pluggable: false}
          jumpers:
            BANK: {common: F, positions: {5 V: low, 24 V: V}}
          circuit:
            rail: {kind: unpredictable, between: [V, G], value: 2 kohm .. 50 kohm}
            feed: {kind: resistor, between: [V, H1], value: 2 mohm .. 10 mohm}
            switch: {kind: unpredictable, between: [H2, G], value: 20 kohm .. open}
            pull: {kind: resistor, between: [V, S1], value: 4.7 kohm +-1 %}
            return: {kind: resistor, between: [S2, G], value: 2 mohm .. 10 mohm}
            five: {kind: unpredictable, between: [low, G], value: 1 kohm .. 10 kohm}
        load:
          name: Heater
          letter: E
          note: For a test.
          terminals: {"1": {role: passive}, "2": {role: passive}}
          circuit:
            element: {kind: resistor, between: ["1", "2"], value: 11.5 ohm +-10 %}
        sensor:
          name: Sensor
          letter: B
          note: For a test.
          terminals: {"1": {role: passive}, "2": {role: passive}}
          circuit:
            element: {kind: resistor, between: ["1", "2"], value: 80 kohm .. 160 kohm}
        plate:
          name: Plate
          letter: U
          note: For a test.
          exposed: true
          terminals: {PE: {role: protective-earth}}
        """;

    private static readonly WiringCampaign Campaign = new(SmallMachine.Read(
        """
        T1: {type: supply, name: Supply}
        A1: {type: board, name: Board, jumpers: {BANK: 24 V}}
        E1: {type: load, name: Heater}
        B1: {type: sensor, name: Sensor}
        U1: {type: plate, name: Plate}
        """,
        """
        W1: {from: T1.+, to: A1.V, section: 1.5 mm2, colour: red, length: 300 mm}
        W2: {from: T1.-, to: A1.G, section: 1.5 mm2, colour: black, length: 300 mm}
        W3: {from: A1.H1, to: E1.1, section: 0.75 mm2, colour: red, length: 900 mm}
        W4: {from: A1.H2, to: E1.2, section: 0.75 mm2, colour: white, length: 900 mm}
        W5: {from: A1.S1, to: B1.1, section: 0.25 mm2, colour: white, length: 900 mm}
        W6: {from: A1.S2, to: B1.2, section: 0.25 mm2, colour: white, length: 900 mm}
        W7: {from: T1.PE, to: U1.PE, section: 1.5 mm2, colour: green-yellow, length: 500 mm}
        """,
        Types));

    private static readonly FaultDictionary Dictionary = Campaign.Run();

    [Theory]
    [InlineData("bond-missing:W7", Severity.Shock, true)]
    [InlineData("conductor-missing:W3", Severity.DoesNotWork, true)]
    [InlineData("conductor-missing:W2", Severity.Damage, true)]
    [InlineData("end-on-neighbour:W4:A1.H2:A1.H1", Severity.Damage, true)]
    [InlineData("part-reversed:W1:W2:A1.V:A1.G", Severity.Fire, true)]
    [InlineData("ends-swapped:W3:W4:E1.1:E1.2", Severity.Hidden, true)]
    [InlineData("bridge:T1.+:T1.-", Severity.Fire, true)]
    [InlineData("bridge:T1.-:T1.PE", Severity.DoesNotWork, true)]
    [InlineData("poor-joint:W1:A1.V", Severity.Fire, true)]
    [InlineData("poor-joint:W5:B1.1", Severity.DoesNotWork, true)]
    [InlineData("jumper-missing:A1.BANK", Severity.DoesNotWork, true)]
    [InlineData("jumper-wrong:A1.BANK:5 V", Severity.DoesNotWork, true)]
    [InlineData("wrong-value:E1.element:0.25", Severity.Fire, true)]
    [InlineData("connectors-exchanged:A1:ONE:TWO", Severity.Damage, true)]
    public void A_mistake_has_its_severity_and_is_caught_where_a_meter_can_tell(string id, Severity severity, bool isCaught)
    {
        var (index, fault) = Dictionary.Faults.Index().Single(item => item.Item.Id == id);
        Assert.Equal(severity, fault.Severity);
        Assert.Equal(isCaught, Dictionary.ChecksThatCatch(index).Any());
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("quarrymoor")]
    public void Every_mistake_is_a_sentence(string sample) => Assert.All(new WiringCampaign(Repository.Design(sample)).Faults, fault =>
        Assert.Matches(@"^[^a-z].*\.$", fault.Fault.Sentence));

    [Fact]
    public void Every_rule_has_a_kind_of_its_own() => Assert.Distinct(WiringFaultRules.All.Select(rule => rule.Kind));

    [Fact]
    public void Every_fault_says_what_is_wrong_what_follows_and_what_else_shows_it() =>
        Assert.All(Dictionary.Faults, fault => Assert.True(fault.Sentence.EndsWith('.') && fault.Consequence.EndsWith('.') && fault.OtherEvidence.EndsWith('.'), fault.Id));

    [Fact]
    public void A_sensor_plug_and_a_heater_plug_read_apart_as_their_parts_do()
    {
        Assert.Contains(Dictionary.Checks, check => check.SetUp == DeadSetUps.Apart && check.Expectation.Contains(100e3) && !check.Expectation.Contains(11.5));
        Assert.Contains(Dictionary.Checks, check => check.SetUp == DeadSetUps.Apart && check.Expectation.Contains(11.5) && !check.Expectation.Contains(100e3));
    }
}
