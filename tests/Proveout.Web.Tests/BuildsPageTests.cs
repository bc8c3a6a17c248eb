using System.Net;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

public sealed class BuildsPageTests : BenchPageTests
{
    [Fact]
    public async Task All_builds_of_a_machine_stand_side_by_side_with_what_was_read()
    {
        var step = await Server.StepAsync(1);
        await Visitor.SendAsync(Server.Check(step), "reading", ("text", Typed.Good(step)));

        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/builds?check={step.Check.Id}");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("oven-7", page.Text, StringComparison.Ordinal);
        Assert.Contains(step.Check.Title, page.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing yet: no build of this workshop records a mistake", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_machine_that_is_not_there_has_no_builds() =>
        Assert.Equal(HttpStatusCode.NotFound, (await Visitor.GetAsync("/machines/no-such/builds")).Status);

    [Fact]
    public async Task The_front_page_finds_a_build_by_a_part_of_its_name()
    {
        Assert.Contains("oven-7", (await Visitor.GetAsync("/?find=VEN-7")).Text, StringComparison.Ordinal);
        Assert.Contains("No build goes by “nobody”.", (await Visitor.GetAsync("/?find=nobody")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_deviation_stands_at_the_step_of_the_next_build_and_is_answered_there()
    {
        var step = await Server.StepAsync(1);
        await Visitor.SendAsync(Server.Check(step), "deviation", ("note", "Blue in place of black."));
        var next = (await Server.Bench.StartAsync(new StartBuild(SampleBench.Machine, "oven-8", "Bo", ""), default)).Value!;
        var address = $"/builds/{next.Id}/checks/{step.Check.Id}";

        var sent = await Visitor.SendAsync(address, "hint-0", ("answer", "so"), ("note", "Here as well."), ("person", "Bo"));

        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        var page = await Visitor.GetAsync(address);
        Assert.Contains("Blue in place of black.", page.Text, StringComparison.Ordinal);
        Assert.Contains("2 builds found it so.", page.Text, StringComparison.Ordinal);
        Assert.Contains("This build: so here too", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Other builders found it different", (await Visitor.GetAsync(Server.Check(step))).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plain_words_propose_symptoms_and_the_answer_can_be_pasted_under_a_question()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/ask?say=the+fan+does+not+turn");
        Assert.Contains("Which of these is not so?", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("What can it be? None", page.Text, StringComparison.Ordinal);
        var answer = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/ask?symptom-works-g1=bad");
        Assert.Contains("proveout ask MACHINE --bad symptom-works-g1", answer.Text, StringComparison.Ordinal);
        Assert.Contains("CAUTION: ", answer.Text, StringComparison.Ordinal);
    }
}
