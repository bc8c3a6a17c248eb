using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Small runs of the trials of which docs/methods/durability.md has the full ones.</summary>
public sealed class SqliteTrialTests
{
    private static readonly Life ShortLife = new(Sessions: 3, Entries: 120);

    [Fact]
    public async Task What_was_acknowledged_is_there_once_after_twenty_kills_under_load()
    {
        var result = await KillTrial.RunAsync(kills: 20, writersAtOnce: 2, seed: 20310314);

        Assert.Equal((20, 0, 0, 0), (result.Kills, result.Lost, result.Doubled, result.NotWhole));
        Assert.InRange(result.Unacknowledged, 0, result.Kills);
        Assert.True(result.Acknowledged >= 20, $"{result.Acknowledged} entries were acknowledged before the kills");
    }

    [Fact]
    public async Task What_was_acknowledged_entry_or_backup_is_there_after_a_power_cut_at_any_write()
    {
        var result = await PowerCutTrial.RunAsync(cuts: 150, seed: 1, ShortLife, disksThatLie: false);

        Assert.Equal((150, 0, 0, 0), (result.Cuts, result.Lost, result.Broken, result.BackupsLost));
        Assert.InRange(result.MostUnacknowledged, 0, 1);
    }

    [Fact]
    public async Task On_a_disk_that_forgets_its_syncs_entries_are_lost_so_that_the_trial_can_tell()
    {
        var result = await PowerCutTrial.RunAsync(cuts: 30, seed: 1, ShortLife, disksThatLie: true);

        Assert.True(result.Lost + result.Broken > 0, result.ToString());
    }

    [Fact]
    public async Task A_flipped_bit_costs_at_most_what_it_is_in_and_that_is_named()
    {
        var result = await FlipTrial.RunAsync(flips: 120, seed: 2);

        Assert.Equal((120, 0, 0), (result.Flips, result.LostUnnamed, result.Unseen));
        Assert.InRange(result.MostLost, 0, 1);
        Assert.InRange(result.Reported, 1, 119);
        Assert.True(result.Mended > 0, result.ToString());
    }
}
