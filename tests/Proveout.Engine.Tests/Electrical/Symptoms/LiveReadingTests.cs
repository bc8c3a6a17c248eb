using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

public sealed class LiveReadingTests
{
    private const string Bank = "live-plugs-of-loads-and-sensors-pulled-on-nothing-commanded-a1.fan0plus-a1.vpminus";

    private static LiveMachine Flagship => LiveMachine.Flagship;

    [Fact]
    public void A_bank_at_5_volts_reads_5_where_24_belong()
    {
        Assert.True(Flagship.Check(Bank).Expectation.Contains(24));
        Assert.True(Flagship.Shown(Bank, "jumper-wrong:A1.FAN-BANK-1:5 V").Contains(5.02));
        Assert.True(Flagship.Shown(Bank, "jumper-wrong:A1.FAN-BANK-1:5 V").IsDisjointFrom(Flagship.Check(Bank).Expectation));
    }

    [Fact]
    public void Metal_without_its_protective_conductor_reads_what_filters_drive_into_it()
    {
        const string Frame = "live-on-nothing-commanded-u1.metal-x1.pe-pin-ac";

        Assert.True(Flagship.Check(Frame).Expectation.High < 2);
        Assert.True(Flagship.Shown(Frame, "bond-missing:W151").Contains(87));
    }

    [Fact]
    public void A_reversed_plug_reads_negative()
    {
        const string Output = "live-a1-rly-on-q1.3-q1.4";

        Assert.True(Flagship.Shown(Output, "part-reversed:W221:W222:Q1.3:Q1.4").High < 0);
    }

    [Fact]
    public void A_bad_joint_in_a_return_shows_as_voltage_lost_under_load()
    {
        const string Return = "live-all-outputs-on-a2.0v-t1.v-1-drop";
        var joint = Flagship.Context.JointOf(
            Flagship.Context.Design.Conductors.First(conductor => conductor.Id == "W211"), new TerminalReference("A2", "0V")).Index;

        Assert.False(Flagship.Check(Return).Expectation.Contains(0.9));
        Assert.True(Flagship.Shown(Return, new AddInSeries(joint, 0.25, 0.25)).Contains(0.9));
    }

    [Fact]
    public void There_are_enough_readings_and_not_too_many() =>
        Assert.InRange(Flagship.Campaign.Checks.Count(check => check.Kind == "voltage"), 60, 150);

    [Fact]
    public void Live_states_say_so_and_show_cautions()
    {
        Assert.All(Flagship.Campaign.SetUps, setUp => Assert.NotEqual(Phase.Dead, setUp.Phase));
        Assert.All(Flagship.Campaign.SetUps, setUp => Assert.Contains(setUp.Cautions, caution => caution.Contains("local codes", StringComparison.OrdinalIgnoreCase)));
        Assert.All(Flagship.Campaign.Checks, check => Assert.Equal(
            check.Kind == Symptom.Kind ? Phase.InUse : Phase.Live,
            Flagship.Campaign.SetUps.Single(setUp => setUp.Id == check.SetUp).Phase));
    }

    [Fact]
    public void Identifiers_are_unique_and_every_symptom_is_right_in_the_sound_machine()
    {
        Assert.Equal(Flagship.Campaign.Checks.Count, Flagship.Campaign.Checks.Select(check => check.Id).Distinct().Count());
        Assert.All(Flagship.Campaign.Checks.Where(check => check.Kind == Symptom.Kind), check => Assert.Equal(new ReadingInterval(1, 1), check.Expectation));
    }

    [Fact]
    public void A_run_answers_every_fault_in_their_order()
    {
        WiringFault[] two = [Flagship.Faults.First(fault => fault.Fault.Id == "bond-missing:W151"), Flagship.Faults.First(fault => fault.Fault.Id == "switch-shorted:Q1.load")];
        var campaign = new SymptomCampaign(new LiveModel(Flagship.Context), two, check => check.Id is "symptom-tingle-u1-all-on" or "symptom-rests-e1");

        var responses = campaign.Run();

        Assert.Equal(["symptom-tingle-u1-all-on", "symptom-rests-e1"], responses.Select(response => campaign.Checks[response.Checks.Single()].Id));
    }
}
