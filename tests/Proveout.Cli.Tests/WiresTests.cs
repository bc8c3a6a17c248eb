namespace Proveout.Cli.Tests;

public sealed class WiresTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_list_goes_out_is_changed_looked_at_and_saved()
    {
        var machine = Copy("out-and-in");
        var list = folder.At("list.csv");

        Assert.Equal(0, (await Run.OfAsync("wires", "export", machine, "--out", list)).Exit);
        await File.WriteAllTextAsync(list, (await File.ReadAllTextAsync(list, Now)).Replace("W21,A1.M0-1A,M1.1A,0.34 mm2,black", "W21,A1.M0-1A,M1.1A,0.34 mm2,pink", StringComparison.Ordinal), Now);
        var look = await Run.OfAsync("wires", "import", machine, list);
        Assert.Contains("1 changed, 0 added, 0 taken out", look.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing is saved", look.Output, StringComparison.Ordinal);

        var saved = await Run.OfAsync("wires", "import", machine, list, "--save", "--person", "Mara Lindt");
        Assert.Contains("Saved as revision 2.", saved.Output, StringComparison.Ordinal);
        Assert.Contains("W21,A1.M0-1A,M1.1A,0.34 mm2,pink", (await Run.OfAsync("wires", "export", machine)).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sample_is_not_changed()
    {
        var list = folder.Write("pink.csv", "Wire,Colour\r\nW21,pink\r\n");

        var run = await Run.OfAsync("wires", "import", "pennywort", list, "--save", "--person", "Mara Lindt");

        Assert.Equal(2, run.Exit);
        Assert.Contains("Make it your own first", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_that_cannot_be_used_is_named_by_its_line()
    {
        var list = folder.Write("odd.csv", "Wire,Colour\r\nW21,sparkling\r\n");

        var run = await Run.OfAsync("wires", "import", "pennywort", list);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("odd.csv:2:1: `sparkling` is not a colour.", run.Error, StringComparison.Ordinal);
    }

    private static CancellationToken Now => TestContext.Current.CancellationToken;

    private string Copy(string name)
    {
        Directory.CreateDirectory(folder.At(name));
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Places.Samples, "pennywort"), "*.yaml"))
            File.Copy(file, Path.Combine(folder.At(name), Path.GetFileName(file)));
        return folder.At(name);
    }
}
