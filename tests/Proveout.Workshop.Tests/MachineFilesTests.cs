namespace Proveout.Workshop.Tests;

public sealed class MachineFilesTests
{
    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Every_sample_reads_without_a_diagnostic(string name) => Assert.Empty(Samples.Files.Read(Samples.PathOf(name)).Diagnostics);

    [Fact]
    public void A_path_that_does_not_exist_is_named_in_the_diagnostic()
    {
        var diagnostic = Assert.Single(Samples.Files.Read("/no/such/machine.yaml").Diagnostics);
        Assert.Equal("/no/such/machine.yaml", diagnostic.Place.File);
        Assert.NotEmpty(diagnostic.Mend);
    }

    [Fact]
    public void The_fingerprint_changes_with_the_file()
    {
        var folder = Directory.CreateTempSubdirectory("proveout-test-");
        foreach (var file in Directory.EnumerateFiles(Samples.PathOf("pennywort"), "*.yaml"))
            File.Copy(file, Path.Combine(folder.FullName, Path.GetFileName(file)));
        var before = Samples.Files.Read(folder.FullName).Value!.Fingerprint;
        File.AppendAllText(Path.Combine(folder.FullName, "machine.yaml"), "\n# one more line\n");
        Assert.NotEqual(before, Samples.Files.Read(folder.FullName).Value!.Fingerprint);
        folder.Delete(recursive: true);
    }
}
