using System.Net;
using Proveout.Web.Tests.Samples;

namespace Proveout.Web.Tests;

public sealed class EditPageTests : BenchPageTests
{
    private const string Own = "/machines/mine/edit";

    [Fact]
    public async Task A_sample_offers_a_copy_and_no_forms_that_would_change_it()
    {
        var page = await Visitor.GetAsync($"/machines/{SampleBench.Machine}/edit/parts");

        Assert.Contains("Make this machine your own", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("data-form=\"row\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_machine_is_made_ones_own_changed_row_by_row_and_taken_back_without_scripts()
    {
        await MakeOwnAsync();

        var saved = await Visitor.SendAsync($"{Own}/conductors?row=W21", "row", ("called", "W21"), ("f.colour", "pink"), ("person", "Ada"), ("do", "save"));
        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        Assert.Contains("pink", (await Visitor.GetAsync($"{Own}/conductors?find=W21")).Text, StringComparison.Ordinal);
        Assert.Contains("conductor W21: colour changed", (await Visitor.GetAsync(Own)).Text, StringComparison.Ordinal);

        var undone = await Visitor.SendAsync(Own, "undo", ("person", "Ada"));
        Assert.Equal(HttpStatusCode.SeeOther, undone.Status);
        Assert.DoesNotContain("pink", (await Visitor.GetAsync($"{Own}/conductors?find=W21")).Text, StringComparison.Ordinal);
        Assert.Contains("taken back", (await Visitor.GetAsync($"{Own}/revisions")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_that_cannot_be_is_refused_with_what_was_typed_still_there()
    {
        await MakeOwnAsync();

        var refused = await Visitor.SendAsync($"{Own}/conductors?row=W21", "row", ("called", "W21"), ("f.length", "eleven"), ("person", "Ada"), ("do", "save"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("value=\"eleven\"", refused.Html, StringComparison.Ordinal);
        Assert.Contains("`eleven`", refused.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_people_on_one_row_are_shown_both_and_the_second_decides()
    {
        await MakeOwnAsync();
        var form = (await Visitor.GetAsync($"{Own}/conductors?row=W21")).HiddenFields("row");
        await Visitor.SendAsync($"{Own}/conductors?row=W21", "row", ("called", "W21"), ("f.colour", "pink"), ("person", "Ada"), ("do", "save"));

        var asked = await Visitor.PostAsync($"{Own}/conductors", Visitor.Fill(form, ("called", "W21"), ("f.colour", "violet"), ("person", "Ben"), ("do", "save")));
        Assert.Equal(HttpStatusCode.Conflict, asked.Status);
        Assert.Contains("colour: pink", asked.Text, StringComparison.Ordinal);
        Assert.Contains("colour: violet", asked.Text, StringComparison.Ordinal);

        var again = await Visitor.PostAsync($"{Own}/conductors", Visitor.Fill(asked.HiddenFields("row"), ("called", "W21"), ("f.colour", "violet"), ("person", "Ben"), ("do", "save")));
        Assert.Equal(HttpStatusCode.SeeOther, again.Status);
        Assert.Contains("violet", (await Visitor.GetAsync($"{Own}/conductors?find=W21")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_terminals_that_are_tapped_fill_in_the_form_of_a_new_conductor()
    {
        await MakeOwnAsync();

        var first = await Visitor.GetAsync($"{Own}/draw?part=A1");
        Assert.Contains("/machines/mine/edit/draw?part=A1&amp;from=A1.M0-1A", first.Html, StringComparison.Ordinal);
        var second = await Visitor.GetAsync($"{Own}/draw?part=M1&from=A1.M0-1A");
        Assert.Contains("/machines/mine/edit/conductors?new=1&amp;from=A1.M0-1A&amp;to=M1.1A", second.Html, StringComparison.Ordinal);
        var form = await Visitor.GetAsync($"{Own}/conductors?new=1&from=A1.M0-1A&to=M1.1A");
        Assert.Contains("value=\"A1.M0-1A\"", form.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"M1.1A\"", form.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_terminals_of_a_part_stand_in_a_table_with_what_each_carries_bears_and_is_wired_to()
    {
        await MakeOwnAsync();

        var page = await Visitor.GetAsync($"{Own}/draw?part=X1");

        Assert.Matches(@"(?s)<th scope=""row"">IN\+</th>\s*<td data-head=""Carries"">positive pole</td>.*?conductors\?row=W1#form"">W1</a>", page.Html.Replace("&#x2B;", "+", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_text_with_an_error_is_kept_as_a_draft_with_the_line_shown()
    {
        await MakeOwnAsync();

        var kept = await Visitor.SendAsync($"{Own}/file?name=gantry.yaml", "file", ("text", "format: proveout-machine 1\r\npartz:\r\n  X1: {}\r\n"), ("person", "Ada"), ("do", "save"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, kept.Status);
        Assert.Contains("line 2, column 1", kept.Text, StringComparison.Ordinal);
        Assert.Contains("partz:", kept.Html, StringComparison.Ordinal);
        Assert.Contains("Go on with draft 1", (await Visitor.GetAsync(Own)).Text, StringComparison.Ordinal);
        Assert.Contains("partz:", (await Visitor.GetAsync($"{Own}/file?name=gantry.yaml&draft=1")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_text_longer_than_a_field_may_be_is_saved_and_comes_back_as_it_was()
    {
        await MakeOwnAsync();
        var text = (await Visitor.GetAsync($"{Own}/revisions/1/gantry.yaml")).Html + "# the end\n";
        Assert.True(text.Length > 4000);

        var saved = await Visitor.SendAsync($"{Own}/file?name=gantry.yaml", "file", ("text", text.Replace("\n", "\r\n", StringComparison.Ordinal)), ("person", "Ada"), ("do", "save"));

        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        Assert.Equal(text, (await Visitor.GetAsync($"{Own}/revisions/2/gantry.yaml")).Html);
    }

    [Fact]
    public async Task A_wire_list_shows_what_it_changes_before_it_is_saved()
    {
        await MakeOwnAsync();
        Assert.StartsWith("Wire,From,To,", (await Visitor.GetAsync($"{Own}/wires.csv")).Html, StringComparison.Ordinal);

        var look = await Visitor.SendAsync($"{Own}/wires", "look", ("list", "Wire,Colour\nW21,pink\n"), ("do", "look"));
        Assert.Equal(HttpStatusCode.OK, look.Status);
        Assert.Contains("1 conductor is changed", look.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("pink", (await Visitor.GetAsync($"{Own}/conductors?find=W21")).Text, StringComparison.Ordinal);

        var saved = await Visitor.PostAsync($"{Own}/wires", Visitor.Fill(look.HiddenFields("save"), ("list", "Wire,Colour\nW21,pink\n"), ("person", "Ada"), ("do", "save")));
        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        Assert.Contains("pink", (await Visitor.GetAsync($"{Own}/conductors?find=W21")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jumper_is_chosen_from_its_positions()
    {
        await Visitor.SendAsync("/machines/alderbrook/edit", "own", ("name", "Mine"), ("person", "Ada"));

        var saved = await Visitor.SendAsync($"{Own}/jumpers", "A2", ("jumper0", ""), ("person", "Ada"));

        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        Assert.Contains("taken out", (await Visitor.GetAsync(Own)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_page_of_the_editor_stays_light()
    {
        await Visitor.SendAsync("/machines/alderbrook/edit", "own", ("name", "Mine"), ("person", "Ada"));
        foreach (var page in new[] { "", "/parts", "/conductors", "/conductors?new=1", "/routes", "/jumpers", "/draw?part=A1", "/machine", "/wires", "/revisions" })
            Assert.InRange((await Visitor.GetAsync($"{Own}{page}")).Html.Length, 1, 150_000);
    }

    private async Task MakeOwnAsync()
    {
        var made = await Visitor.SendAsync($"/machines/{SampleBench.Machine}/edit", "own", ("name", "Mine"), ("person", "Ada"));
        Assert.Equal((HttpStatusCode.SeeOther, $"{Own}#"), (made.Status, made.Header("Location")));
    }
}
