using System.Text;

namespace Proveout.Fuzz.Tests;

/// <summary>Readers with mistakes put in: each must be found.</summary>
public sealed class CampaignTests
{
    [Fact]
    public void An_exception_behind_three_checks_is_found_and_its_input_made_small()
    {
        var finding = Assert.Single(Findings(Deep, mutations: 200_000));

        Assert.StartsWith("FormatException", finding.Kind, StringComparison.Ordinal);
        Assert.InRange(finding.Input.Length, 3, 40);
    }

    [Fact]
    public void A_reader_that_takes_long_is_reported() => Assert.Equal("slow", Assert.Single(Findings(Slow, mutations: 3)).Kind);

    [Fact]
    public void A_reader_that_takes_much_memory_is_reported() => Assert.Equal("large", Assert.Single(Findings(Large, mutations: 3)).Kind);

    [Fact]
    public void A_reader_that_never_comes_back_is_reported_and_left_behind()
    {
        using var never = new ManualResetEventSlim();
        var campaign = new Campaign(
            new FuzzTarget("table", _ =>
            {
                never.Wait(TimeSpan.FromSeconds(20));
                return "late";
            }),
            seed: 1)
        {
            LongestWait = TimeSpan.FromSeconds(0.1),
        };

        campaign.Run(1, TimeSpan.FromMinutes(1));

        Assert.Equal("hang", Assert.Single(campaign.Findings).Kind);
        never.Set();
    }

    [Fact]
    public void The_same_seed_makes_the_same_run()
    {
        Assert.Equal(Inputs(seed: 3), Inputs(seed: 3));
        Assert.NotEqual(Inputs(seed: 3), Inputs(seed: 4));

        static string Inputs(int seed)
        {
            var told = new StringBuilder();
            new Campaign(new FuzzTarget("table", input => input.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)), seed) { Before = input => told.Append(Convert.ToHexString(input)) }.Run(200, TimeSpan.FromMinutes(1));
            return told.ToString();
        }
    }

    private static IReadOnlyCollection<Finding> Findings(Func<byte[], string> read, long mutations)
    {
        var campaign = new Campaign(new FuzzTarget("table", read), seed: 1);
        campaign.Run(mutations, TimeSpan.FromMinutes(2));
        return campaign.Findings;
    }

    // Each check passed is an outcome of its own, so that the next is looked for behind it.
    private static string Deep(byte[] input)
    {
        var text = Encoding.Latin1.GetString(input);
        if (!text.Contains("\t\t", StringComparison.Ordinal))
            return "no tabs";
        if (!text.Contains("-1", StringComparison.Ordinal))
            return "no number";
        return text.Contains('\xFF', StringComparison.Ordinal) ? throw new FormatException("Found.") : "no sign";
    }

    private static string Slow(byte[] input)
    {
        var start = Environment.CpuUsage.TotalTime;
        while (Environment.CpuUsage.TotalTime - start < Watch.LongestWork * 1.1)
            Thread.SpinWait(1000);
        return "slow";
    }

    private static string Large(byte[] input)
    {
        for (var piece = 0; piece < 300; piece++)
            GC.KeepAlive(new byte[1 << 20]);
        return "large";
    }
}
