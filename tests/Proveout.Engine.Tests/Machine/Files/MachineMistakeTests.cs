namespace Proveout.Engine.Tests.Machine;

public sealed class MachineMistakeTests
{
    // A misspelt key that must be given would be missing too; these may be left out, or are put in beside.
    [Theory]
    [InlineData("place: rear", "^plcae: rear", "plcae", "`place`")]
    [InlineData("section: 1.0", "^color: red, section: 1.0", "color", "`colour`")]
    [InlineData("summary:", "^sumary:", "sumary", "`summary`")]
    [InlineData("earthing: TN-S}", "earthing: TN-S, ^phases: 3}", "phases", "`voltage`, `frequency`, `earthing` and `residual-current`")]
    [InlineData("routes:", "^extras: {}\nroutes:", "extras", "`conductors`")]
    public void An_unknown_key_is_reported_with_the_nearest(string right, string wrong, string offending, string mend) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, "unknown-key", offending, mend);

    [Theory]
    [InlineData("name: Small oven", "name: Small oven\n  ^name: Other", "duplicate-key", "name")]
    [InlineData("colour: blue", "colour: blue, ^colour: red", "duplicate-key", "colour")]
    [InlineData("  E1: {", "  ^X1: {type: inlet, name: Again}\n  E1: {", "duplicate-name", "X1")]
    [InlineData("  W2: {", "  ^W1: {", "duplicate-name", "W1")]
    public void What_stands_twice_is_reported_where_it_stands_again(string right, string wrong, string rule, string offending) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, rule, offending, "");

    [Theory]
    [InlineData("  W2: {from: X1.N, to: E1.B, section: AWG 18,", "  ^W2: {from: X1.N, to: E1.B,", "section")]
    [InlineData("X1: {type: inlet,", "^X1: {", "type")]
    [InlineData("  mains: {voltage: 230 V, ", "  ^mains: {", "voltage")]
    [InlineData("format: proveout-machine 1\nmachine:", "^machine:", "format")]
    public void A_missing_key_is_reported_at_what_lacks_it(string right, string wrong, string key) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, "missing-key", key, $"Add `{key}`.");

    [Theory]
    [InlineData("bridge: off", "^brigde: off", "unknown-key", "brigde", "`bridge`")]
    [InlineData("bridge: off", "bridge: ^of", "not-a-number", "of", "`off`")]
    [InlineData("bridge: off", "bridge: ^never", "not-a-number", "never", "`0.004`")]
    [InlineData("poor-joint: 0.004", "poor-joint: ^4 %", "not-a-number", "4 %", "`0.004`")]
    [InlineData("poor-joint: 0.004", "poor-joint: ^0", "out-of-range", "0", "`0.004`")]
    [InlineData("poor-joint: 0.004", "poor-joint: ^1", "out-of-range", "1", "`0.004`")]
    [InlineData("poor-joint: 0.004", "poor-joint: ^-0.1", "out-of-range", "-0.1", "`0.004`")]
    [InlineData("bridge: off", "bridge: off, ^bridge: 0.1", "duplicate-key", "bridge", "Keep one")]
    [InlineData("mistakes: {bridge: off, poor-joint: 0.004}", "^mistakes: off", "wrong-type", "off", "")]
    public void A_wrong_setting_of_a_kind_of_mistake_is_reported_with_the_nearest(string right, string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, rule, offending, mend);

    [Theory]
    [InlineData("type: inlet", "type: ^inlte", "unknown-type", "inlte", "`inlet`")]
    [InlineData("from: X1.N,", "from: ^X2.N,", "unknown-part", "X2", "`X1`, `A1` and `E1`")]
    [InlineData("from: X1.L-OUT", "from: ^X1.L-OTU", "unknown-terminal", "L-OTU", "`L-OUT`")]
    [InlineData("to: E1.B", "to: ^E1.b", "unknown-terminal", "b", "`B`")]
    [InlineData("FAN-BANK: 24 V", "^FAN-BNAK: 24 V", "unknown-jumper", "FAN-BNAK", "`FAN-BANK`")]
    [InlineData("FAN-BANK: 24 V", "FAN-BANK: ^24V", "unknown-position", "24V", "`24 V`")]
    [InlineData("route: [bay-duct]", "route: [^bay-duc]", "unknown-route", "bay-duc", "`bay-duct`")]
    [InlineData("values: {element:", "values: {^elemnt:", "unknown-element", "elemnt", "`element`")]
    [InlineData("to: E1.A", "to: ^X1.L-OUT", "loop", "X1.L-OUT", "other terminal")]
    public void A_reference_to_what_does_not_exist_is_reported(string right, string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, rule, offending, mend);

    [Theory]
    [InlineData("colour: blue", "colour: ^bleu", "unknown-word", "bleu", "`blue`")]
    [InlineData("earthing: TN-S", "earthing: ^TNS", "unknown-word", "TNS", "`TN-S`")]
    [InlineData("kind: duct", "kind: ^pipe", "unknown-word", "pipe", "`duct`, `channel`, `chain` and `bundle`")]
    [InlineData("section: 1.0 mm2", "section: ^1.0 mm", "wrong-unit", "mm", "`mm2`")]
    [InlineData("section: AWG 18", "section: ^AWG 99", "out-of-range", "AWG 99", "0 to 56")]
    [InlineData("length: 350 mm", "length: ^350", "no-unit", "350", "`350 mm`")]
    [InlineData("length: 350 mm", "length: ^-350 mm", "out-of-range", "-350 mm", "above zero")]
    [InlineData("earthing: TN-S}", "earthing: TT, residual-current: ^-30 mA}", "out-of-range", "-30 mA", "above zero")]
    [InlineData("voltage: 230 V", "voltage: ^230 v", "wrong-unit", "v", "`V`")]
    [InlineData("frequency: 50 Hz", "frequency: ^fifty", "not-a-quantity", "fifty", "`50 Hz`")]
    [InlineData("105.8 ohm +-7 %", "^105.8 ohm", "no-tolerance", "105.8 ohm", "+-7 %")]
    [InlineData("105.8 ohm +-7 %", "^105.8 ohm +-107 %", "out-of-range", "105.8 ohm +-107 %", "less than 100 %")]
    [InlineData("105.8 ohm +-7 %", "^7 ohm .. 5 ohm", "out-of-range", "7 ohm .. 5 ohm", "lower limit first")]
    [InlineData("105.8 ohm +-7 %", "^5 ohn .. 7 ohm", "wrong-unit", "ohn", "`ohm`")]
    public void A_wrong_word_or_quantity_is_reported_with_the_nearest(string right, string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, rule, offending, mend);

    [Theory]
    [InlineData("route: [bay-duct]", "^route: bay-duct", "wrong-type", "bay-duct")]
    [InlineData("name: Plate heater", "^name: [Plate, heater]", "wrong-type", "name")]
    [InlineData("values: {element: 105.8 ohm +-7 %}", "^values: 105.8 ohm +-7 %", "wrong-type", "values")]
    [InlineData("  bay-duct: {kind: duct, note: Mains side.}", "  ^bay-duct: duct", "wrong-type", "duct")]
    [InlineData("name: Plate heater", "^name: null", "wrong-type", "name")]
    [InlineData("from: X1.N,", "from: ^X1,", "bad-reference", "X1")]
    [InlineData("  A1: {", "  ^a.1: {", "bad-name", "a.1")]
    public void A_value_of_the_wrong_type_is_reported(string right, string wrong, string rule, string offending) =>
        Mistake.IsReported(Sample.MachineText, right, wrong, rule, offending, "");

    [Theory]
    [InlineData("^proveout-machine 2", "newer-format", "proveout-machine 2", "newer")]
    [InlineData("^proveout-machine 0", "unknown-format", "proveout-machine 0", "`format: proveout-machine 1`")]
    [InlineData("^proveout-machin 1", "unknown-format", "proveout-machin 1", "`format: proveout-machine 1`")]
    [InlineData("^proveout-parts 1", "unknown-format", "proveout-parts 1", "`format: proveout-machine 1`")]
    public void Another_format_is_refused_and_nothing_else_is_said(string wrong, string rule, string offending, string mend) =>
        Mistake.IsReported(Sample.MachineText, "proveout-machine 1", wrong, rule, offending, mend);
}
