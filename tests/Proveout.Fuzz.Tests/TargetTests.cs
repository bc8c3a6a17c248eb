namespace Proveout.Fuzz.Tests;

/// <summary>The short run; <c>dotnet run --project tests/Proveout.Fuzz -c Release -- --minutes 60</c> is the long one.</summary>
public sealed class TargetTests
{
    private const int Mutations = 2000;

    public static TheoryData<string> Names => [.. Targets.All.Select(target => target.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Two_thousand_changed_inputs_or_half_a_minute_of_them_are_read_or_refused_in_bounded_time_and_memory(string name)
    {
        var campaign = new Campaign(Targets.Of(name), seed: 2026);
        // Whoever has less time than usual gets fewer inputs, not a failure.
        campaign.Run(Mutations, TimeSpan.FromSeconds(30));

        Assert.Empty(campaign.Findings.Select(finding => $"{finding}\n{finding.Detail}"));
        Assert.True(campaign.Outcomes >= 2, $"Only {campaign.Outcomes} different outcomes: the inputs do not reach far.");
    }

    [Fact]
    public void Every_folder_of_inputs_has_a_target() =>
        Assert.Equal(
            Targets.All.Select(target => target.Name).Order(StringComparer.Ordinal),
            Directory.EnumerateDirectories(Path.Combine(Corpus.Root, "tests", "cases", "fuzz")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal));
}
