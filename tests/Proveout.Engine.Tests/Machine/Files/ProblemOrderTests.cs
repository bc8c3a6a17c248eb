using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class ProblemOrderTests
{
    [Fact]
    public void Everything_that_is_wrong_is_reported_in_one_go_in_file_order()
    {
        var text = Sample.MachineText
            .Replace("voltage: 230 V", "voltage: 230 Vo", StringComparison.Ordinal)
            .Replace("name: Heater", "nam: Heater", StringComparison.Ordinal)
            .Replace("type: board", "type: bord", StringComparison.Ordinal)
            .Replace("from: X1.N", "from: X1.M", StringComparison.Ordinal);

        Assert.Equal(
            ["wrong-unit", "missing-key", "unknown-key", "unknown-type", "unknown-terminal"],
            Sample.Read(text).Diagnostics.Select(diagnostic => diagnostic.Rule));
    }

    [Fact]
    public void The_problems_of_the_first_file_come_first_whatever_its_name()
    {
        var read = MachineReader.Read([new("z.yaml", "format: proveout-machine 1\nq: 1"), new("a.yaml", "format: proveout-machine 1\nr: 1")], Sample.Catalogue);

        Assert.Equal(["z.yaml:2:1", "a.yaml:2:1"], read.Diagnostics.Select(diagnostic => diagnostic.Place.ToString()));
    }

    [Fact]
    public void Of_thousands_of_problems_the_first_are_shown_and_the_rest_is_counted()
    {
        var keys = string.Concat(Enumerable.Range(0, 5000).Select(number => $"key-{number}: 1\n"));

        var diagnostics = Sample.Read("format: proveout-machine 1\nmachine: {name: A}\n" + keys).Diagnostics;

        Assert.Equal(Problems.MostShown + 1, diagnostics.Count);
        Assert.Equal("There are 4900 more problems.", diagnostics[^1].Message);
    }

    [Fact]
    public void A_decimal_comma_between_braces_is_explained()
    {
        var diagnostics = Sample.Read(Sample.MachineText.Replace("0.4 m}", "0,4 m}", StringComparison.Ordinal)).Diagnostics;

        Assert.Equal(["no-unit", "unknown-key"], diagnostics.Select(diagnostic => diagnostic.Rule));
        Assert.Contains("decimal point", diagnostics[1].Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_says_twice_what_the_machine_is_is_refused()
    {
        const string text = "format: proveout-machine 1\nmachine: {name: A}";

        var diagnostic = Assert.Single(MachineReader.Read([new("a.yaml", text), new("b.yaml", text)], Sample.Catalogue).Diagnostics);

        Assert.Equal(("duplicate-key", "b.yaml:2:1"), (diagnostic.Rule, diagnostic.Place.ToString()));
    }

    [Fact]
    public void A_folder_that_does_not_say_what_the_machine_is_is_refused() =>
        Assert.Equal("missing-key", Assert.Single(Sample.Read("format: proveout-machine 1\nparts: {}").Diagnostics).Rule);

    [Fact]
    public void What_stands_in_a_file_that_cannot_be_read_is_not_missed_in_another()
    {
        var read = MachineReader.Read(
            [new("a.yaml", "format: proveout-machine 1\nmachine: {name: A}\nlater: {more: {parts: [X1]}}"), new("b.yaml", "format: proveout-machine 1\nparts: {X1: {type: inlet, name: B}")],
            Sample.Catalogue);

        Assert.Equal("b.yaml", Assert.Single(read.Diagnostics).Place.File);
    }

    [Fact]
    public void No_file_at_all_is_refused() =>
        Assert.Equal("no-file", Assert.Single(MachineReader.Read([], Sample.Catalogue).Diagnostics).Rule);

    [Fact]
    public void A_part_that_two_files_name_is_refused()
    {
        var read = MachineReader.Read(
            [new("a.yaml", "format: proveout-machine 1\nmachine: {name: A}\nparts: {X1: {type: inlet, name: B}}"), new("b.yaml", "format: proveout-machine 1\nparts: {X1: {type: inlet, name: B}}")],
            Sample.Catalogue);

        Assert.Equal(("duplicate-name", "b.yaml:2:9"), (Assert.Single(read.Diagnostics).Rule, read.Diagnostics[0].Place.ToString()));
    }
}
