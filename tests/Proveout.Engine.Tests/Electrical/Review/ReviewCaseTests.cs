using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Review;

/// <summary>Machines of tests/cases/review: a folder a rule, one that it passes and one with the flaw that it is for.</summary>
public sealed class ReviewCaseTests
{
    public static TheoryData<string> Rules => [.. ReviewRules.All.Select(rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_machine_with_the_flaw_is_told_so(string rule) =>
        Assert.Contains(DesignReview.Of(Read(rule, "fail")), finding => finding.Rule == rule && finding.Severity > FindingSeverity.NotKnown);

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_machine_without_the_flaw_is_not_accused_of_it(string rule) =>
        Assert.DoesNotContain(DesignReview.Of(Read(rule, "pass")), finding => finding.Rule == rule && finding.Severity > FindingSeverity.NotKnown);

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_machine_without_a_flaw_has_no_error_and_no_warning_by_any_rule(string rule) =>
        Assert.Empty(DesignReview.Of(Read(rule, "pass")).Where(finding => finding.Severity > FindingSeverity.Note).Select(finding => $"{finding.Rule}: {finding.Sentence}"));

    [Fact]
    public void Every_rule_can_be_switched_off_by_its_name() =>
        Assert.Equal(ReviewRuleNames.All, ReviewRules.All.Select(rule => rule.Id));

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_that_is_switched_off_says_only_why(string rule)
    {
        var design = Read(rule, "fail");
        var off = design with { Review = design.Review with { Off = [new(rule, "Looked at by hand.")] } };
        var finding = Assert.Single(DesignReview.Of(off), finding => finding.Rule == rule);
        Assert.Equal(FindingSeverity.Note, finding.Severity);
        Assert.EndsWith("Reason given: Looked at by hand.", finding.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_machine_reads_again_as_it_is_written(string rule)
    {
        var design = Read(rule, "fail");
        var outcome = MachineReader.Read([new SourceText("again.yaml", MachineWriter.Write(design, Repository.Catalogue))], Repository.Catalogue);
        Assert.Equal(design, outcome.Value);
    }

    [Theory]
    [InlineData("take: bonded, because: Faults trip at once.", true)]
    [InlineData("take: floating, because: A first fault does no harm.", false)]
    public void What_the_builder_chose_is_held_against_the_design(string choice, bool agrees)
    {
        var bonded = File.ReadAllText(Repository.Folder("tests", "cases", "review", "bond-in-chain", "pass.yaml"))
            .Replace("  short-circuit: 1 kA", $"  choices: {{zero-volt: {{{choice}}}}}", StringComparison.Ordinal);
        var design = MachineReader.Read([new SourceText("chosen.yaml", bonded)], Repository.Catalogue).Value!;
        Assert.Equal(!agrees, DesignReview.Of(design).Any(finding => finding.Rule == "zero-volt-bonded-once"));
    }

    // 115 A·√s/mm² over √(10 ms / 2): a hair of copper of 0.01 mm² bears 16.2 A of a supply's 30 A.
    [Fact]
    public void A_conductor_that_a_peak_would_overheat_is_found()
    {
        var text = File.ReadAllText(Repository.Folder("tests", "cases", "review", "inrush-borne", "pass.yaml"))
            .Replace("to: T1.L, section: 1.0 mm2", "to: T1.L, section: 0.01 mm2", StringComparison.Ordinal);
        var design = MachineReader.Read([new SourceText("hair.yaml", text)], Repository.Catalogue).Value!;
        var finding = Assert.Single(DesignReview.Of(design), finding => finding.Rule == "inrush-borne");
        Assert.Equal("T1 draws 30 A for some milliseconds when switched on; W8 bears 16.2 A.", finding.Sentence);
    }

    internal static MachineDesign Read(string rule, string name)
    {
        var file = Repository.Folder("tests", "cases", "review", rule, $"{name}.yaml");
        var outcome = MachineReader.Read([new SourceText($"{rule}/{name}.yaml", File.ReadAllText(file))], Repository.Catalogue);
        return outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics));
    }
}
