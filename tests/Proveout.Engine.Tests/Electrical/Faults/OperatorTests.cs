using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Faults;

/// <summary>For each kind of mistake a machine that has it, and one that cannot.</summary>
public sealed class OperatorTests
{
    // Mains through a two-pole switch, a relay and a cut-off to a heater on a plate; two supplies; a board with plugs, jumpers, a data pair; sensors, fans, motors.
    private static readonly WiringCampaign Rich = new(SmallMachine.Read(
        """
        X1: {type: mains-inlet-fused, name: Inlet, place: rear}
        S1: {type: rocker-switch-two-pole, name: Main switch, place: rear}
        T1: {type: supply-24-150, name: Supply, place: bay}
        T2: {type: converter-24-to-5, name: Converter, place: bay}
        U1: {type: metal-panel, name: Panel, place: bay}
        F2: {type: thermal-cut-off, name: Cut-off, place: plate}
        E1: {type: mains-silicone-heater, name: Plate heater, place: plate}
        Q1: {type: solid-state-relay-25, name: Plate relay, place: bay}
        A1: {type: board, name: Board, place: bay, jumpers: {BANK: 24 V}}
        A2: {type: board, name: Second board, place: bay, jumpers: {END: fitted}}
        B1: {type: ntc-100k, name: Nozzle temperature, place: head}
        B2: {type: ntc-100k, name: Chamber temperature, place: head}
        B3: {type: micro-switch, name: End, place: head}
        S2: {type: emergency-stop-2, name: Stop, place: front}
        M1: {type: stepper-42-40, name: Motor, place: head}
        """,
        """
        W1: {from: X1.L, to: S1.1, section: 1.0 mm2, colour: brown, length: 300 mm}
        W2: {from: X1.N, to: S1.3, section: 1.0 mm2, colour: blue, length: 300 mm}
        W3: {from: S1.2, to: T1.L, section: 1.0 mm2, colour: brown, length: 300 mm}
        W4: {from: S1.4, to: T1.N, section: 1.0 mm2, colour: blue, length: 300 mm}
        W5: {from: X1.PE, to: T1.PE, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        W6: {from: T1.CASE, to: U1.PE, section: 1.5 mm2, colour: green-yellow, length: 300 mm}
        W7: {from: S1.2, to: Q1.1, section: 1.0 mm2, colour: brown, length: 300 mm}
        W8: {from: Q1.2, to: F2.1, section: 1.0 mm2, colour: brown, length: 300 mm}
        W9: {from: F2.2, to: E1.L, section: 1.0 mm2, colour: brown, length: 300 mm}
        W10: {from: S1.4, to: E1.N, section: 1.0 mm2, colour: blue, length: 300 mm}
        W11: {from: S2.12, to: A1.V, section: 1.0 mm2, colour: red, length: 300 mm}
        W12: {from: T1.V-1, to: A1.G, section: 1.0 mm2, colour: black, length: 300 mm}
        W13: {from: T1.V+2, to: T2.IN+, section: 0.75 mm2, colour: red, length: 300 mm}
        W14: {from: T1.V-2, to: T2.IN-, section: 0.75 mm2, colour: black, length: 300 mm}
        W15: {from: T2.OUT+, to: A2.V, section: 0.75 mm2, colour: red, length: 300 mm}
        W16: {from: T2.OUT-, to: A2.G, section: 0.75 mm2, colour: black, length: 300 mm}
        W17: {from: A1.O1, to: Q1.3, section: 0.34 mm2, colour: red, length: 300 mm}
        W18: {from: A1.O2, to: Q1.4, section: 0.34 mm2, colour: white, length: 300 mm}
        W19: {from: A1.S1, to: B1.1, section: 0.14 mm2, colour: white, length: 300 mm}
        W20: {from: A1.S2, to: B1.2, section: 0.14 mm2, colour: white, length: 300 mm}
        W21: {from: A1.P1, to: B2.1, section: 0.14 mm2, colour: white, length: 300 mm}
        W22: {from: A1.P2, to: B2.2, section: 0.14 mm2, colour: white, length: 300 mm}
        W23: {from: A1.I1, to: B3.NC, section: 0.22 mm2, colour: white, length: 300 mm}
        W24: {from: A1.I2, to: B3.C, section: 0.22 mm2, colour: black, length: 300 mm}
        W25: {from: A1.C1, to: M1.1A, section: 0.22 mm2, colour: black, length: 300 mm}
        W26: {from: A1.C2, to: M1.1B, section: 0.22 mm2, colour: white, length: 300 mm}
        W27: {from: A1.C3, to: M1.2A, section: 0.22 mm2, colour: red, length: 300 mm}
        W28: {from: A1.C4, to: M1.2B, section: 0.22 mm2, colour: grey, length: 300 mm}
        W29: {from: A1.H, to: A2.H, section: 0.22 mm2, colour: yellow, length: 300 mm}
        W30: {from: A1.L, to: A2.L, section: 0.22 mm2, colour: white, length: 300 mm}
        W31: {from: A1.U1, to: A2.U1, section: 0.22 mm2, colour: red, length: 300 mm}
        W32: {from: A1.U2, to: A2.U2, section: 0.09 mm2, colour: white, length: 300 mm}
        W33: {from: A1.U3, to: A2.U3, section: 0.09 mm2, colour: green, length: 300 mm}
        W34: {from: T1.V+1, to: S2.11, section: 0.5 mm2, colour: red, length: 300 mm}
        """,
        OperatorMachines.Board,
        mains: SmallMachine.Mains));

    // Two lever terminals and a wire: nothing to exchange, switch, bond or plug.
    private static readonly WiringCampaign Bare = new(SmallMachine.Read(
        """
        X1: {type: feed, name: One, place: left}
        X2: {type: feed, name: Two, place: right}
        """,
        "W1: {from: X1.A, to: X2.A, section: 0.5 mm2, colour: red, length: 300 mm}",
        "feed: {name: Feed, letter: X, note: For a test., terminals: {A: {role: passive}}}"));

    private static readonly FaultDictionary Dictionary = Rich.Run();

    public static TheoryData<string> Kinds => [.. WiringFaultRules.All.Select(rule => rule.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_machine_with_what_it_takes_has_the_mistake(string kind) => Assert.Contains(Rich.Faults, fault => fault.Fault.Kind == kind);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_machine_of_one_wire_can_only_have_what_a_wire_and_its_joints_can(string kind) =>
        Assert.Equal(kind is "conductor-missing" or "weak-joint" or "poor-joint", Bare.Faults.Any(fault => fault.Fault.Kind == kind));

    [Theory]
    [InlineData("line-neutral-swapped:W1:W2:X1.L:X1.N", Severity.Shock, true)]
    [InlineData("ahead-of-switch:W7:S1.2:S1.1", Severity.Fire, true)]
    [InlineData("sides-exchanged:Q1:LOAD:CONTROL", Severity.Shock, true)]
    [InlineData("sides-exchanged:T2:INPUT:OUTPUT", Severity.Fire, true)]
    [InlineData("switch-shorted:Q1.load", Severity.Fire, true)]
    [InlineData("switch-shorted:A1.off", Severity.Fire, true)]
    [InlineData("protection-bypassed:F2.link", Severity.Fire, false)]
    [InlineData("conductors-exchanged:W25:W27", Severity.DoesNotWork, true)]
    [InlineData("contacts-mirrored:M1:PLUG", Severity.DoesNotWork, true)]
    [InlineData("parts-exchanged:B1:B2", Severity.Fire, false)]
    [InlineData("contact-sense:S2.channel-1", Severity.Damage, true)]
    [InlineData("contact-sense:W23:B3.NC:B3.NO", Severity.Damage, true)]
    [InlineData("contact-stuck-closed:S2.channel-1", Severity.Damage, true)]
    [InlineData("contact-never-closes:B3.closing", Severity.DoesNotWork, true)]
    [InlineData("bond-extra:X1.N:X1.PE", Severity.Shock, true)]
    [InlineData("body-contact:E1.N:PLATE", Severity.Shock, true)]
    [InlineData("leakage:E1.element-to-plate", Severity.Shock, false)]
    [InlineData("bridge-to-metal:W11:T1.CASE", Severity.Damage, true)]
    [InlineData("element-open:B1.bead", Severity.Fire, true)]
    [InlineData("element-shorted:B1.bead", Severity.DoesNotWork, true)]
    [InlineData("sensor-other-type:B1.bead", Severity.Fire, true)]
    [InlineData("terminator-extra:A1.H:A1.L", Severity.DoesNotWork, true)]
    [InlineData("jumper-extra:A1.END:fitted", Severity.DoesNotWork, true)]
    [InlineData("jumper-across:A1.BANK:5 V:24 V", Severity.Damage, true)]
    [InlineData("data-cores-missing:A1:DATA", Severity.DoesNotWork, true)]
    [InlineData("supplies-joined:T1:T2", Severity.Damage, true)]
    [InlineData("plug-shifted:A1:HEADER:1", Severity.DoesNotWork, false)]
    [InlineData("plug-reversed:A1:HEADER", Severity.DoesNotWork, false)]
    [InlineData("contacts-shifted:A1:I1:1", Severity.Fire, true)]
    [InlineData("ends-exchanged:W3:W5:T1.L:T1.PE", Severity.Shock, true)]
    public void A_mistake_has_its_severity_and_is_caught_where_a_meter_can_tell(string id, Severity severity, bool isCaught)
    {
        var found = Dictionary.Faults.Index().Where(item => item.Item.Id == id).ToArray();
        Assert.True(found.Length == 1, $"{id} is not among: {string.Join(", ", Dictionary.Faults.Where(fault => fault.Kind == id.Split(':')[0]).Select(fault => fault.Id))}");
        Assert.Equal((severity, isCaught), (found[0].Item.Severity, Dictionary.ChecksThatCatch(found[0].Index).Any()));
    }

    [Fact]
    public void A_contact_that_never_closes_reads_open_where_the_sound_one_closes_when_operated()
    {
        var fault = Dictionary.Faults.Index().Single(item => item.Item.Id == "contact-never-closes:B3.closing").Index;

        Assert.All(Dictionary.ChecksThatCatch(fault), check => Assert.Equal("b3-lever-pressed", Dictionary.Checks[check].SetUp));
        Assert.All(Dictionary.ChecksThatCatch(fault), check => Assert.True(Dictionary.IntervalOf(fault, check).IsOverRangeOnly));
    }

    [Fact]
    public void A_contact_of_the_other_sense_reads_open_at_rest_and_closed_when_operated()
    {
        var fault = Dictionary.Faults.Index().Single(item => item.Item.Id == "contact-sense:S2.channel-1").Index;
        var caught = Dictionary.ChecksThatCatch(fault).ToArray();

        Assert.Contains(caught, check => Dictionary.Checks[check].SetUp == "s2-button-pressed" && Dictionary.IntervalOf(fault, check).High < 1);
        Assert.Contains(caught, check => Dictionary.Checks[check].SetUp == DeadSetUps.Apart && Dictionary.Checks[check].Expectation.High < 1);
    }
}
