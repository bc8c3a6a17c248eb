namespace Proveout.Workshop.Tests.Diagnosing;

/// <summary>Diagnosis vignettes of the trade that dead readings alone decide; each folder of tests/cases/diagnosis is one.</summary>
public sealed class VignetteTests
{
    public static TheoryData<string> Cases => [.. Directory.GetDirectories(VignetteCase.Folder).Where(folder => File.Exists(Path.Combine(folder, "input.yaml"))).Select(folder => Path.GetFileName(folder)!).Order()];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_mistake_behind_the_readings_is_among_the_likeliest_suspects(string name)
    {
        var vignette = new VignetteCase(name);
        var suspects = ReadingsDiagnosis.Of(vignette.Planned, vignette.Readings).Suspects;
        Assert.Contains(suspects.Take(vignette.Within), vignette.IsMeantBy);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_suspect_says_which_reading_it_explains_and_what_a_sound_machine_would_show(string name)
    {
        var vignette = new VignetteCase(name);
        var suspect = ReadingsDiagnosis.Of(vignette.Planned, vignette.Readings).Suspects.First(vignette.IsMeantBy);
        Assert.NotEmpty(suspect.Why);
        Assert.All(suspect.Why, sentence => Assert.Contains("is what this gives", sentence, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_names_its_source(string name) =>
        Assert.Contains("Source: common practice", File.ReadAllText(Path.Combine(VignetteCase.Folder, name, "source.md")), StringComparison.Ordinal);
}
