namespace Proveout.Journal.Tests.Contract;

public abstract partial class JournalContract
{
    [Fact]
    public async Task A_seal_holds_while_the_record_goes_on()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var last = await journal.AppendAsync(build.Id, Drafts.Note("sealed"));
        using var key = SealKey.Make();

        var seal = await journal.SealAsync(build.Id, key, "Ada Example");
        await journal.AppendAsync(build.Id, Drafts.Note("later"));

        Assert.Equal((build.Id, 1, last.Hash, "Ada Example", key.PublicKey), (seal.BuildId, seal.Entries, seal.Hash, seal.Person, seal.PublicKey));
        var verdict = Assert.Single(await journal.CheckSealsAsync(build.Id, [seal], key.PublicKey));
        Assert.Equal((SealStanding.Holds, seal), (verdict.Standing, verdict.Seal));
    }

    [Fact]
    public async Task A_seal_of_another_key_of_another_build_or_with_any_field_changed_does_not_hold()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        var other = await journal.StartBuildAsync(Drafts.Build("002"));
        await journal.AppendAsync(build.Id, Drafts.Note("sealed"));
        using var key = SealKey.Make();
        using var stranger = SealKey.Make();
        var seal = await journal.SealAsync(build.Id, key, "Ada Example");

        async Task<SealStanding> StandingAsync(Guid of, Seal each) => (await journal.CheckSealsAsync(of, [each], key.PublicKey))[^1].Standing;

        Assert.Equal(SealStanding.OtherBuild, await StandingAsync(other.Id, seal));
        Assert.Equal(SealStanding.OtherKey, await StandingAsync(build.Id, stranger.Sign(build.Id, 1, seal.Hash, seal.Sealed, seal.Person)));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Entries = 0 }));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Person = "Bo Example" }));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Sealed = seal.Sealed.AddDays(1) }));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Hash = build.MachineFingerprint }));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Signature = "AAAA" }));
        Assert.Equal(SealStanding.Forged, await StandingAsync(build.Id, seal with { Signature = "no base64" }));
    }

    [Fact]
    public async Task A_record_with_its_end_cut_off_or_written_anew_is_whole_in_itself_and_the_seal_kept_elsewhere_tells()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        using var key = SealKey.Make();
        await journal.AppendAsync(build.Id, Drafts.Note("first"));
        var early = await journal.SealAsync(build.Id, key, "Ada Example");
        await journal.AppendAsync(build.Id, Drafts.Note("second"));
        await journal.AppendAsync(build.Id, Drafts.Note("third"));
        var late = await journal.SealAsync(build.Id, key, "Ada Example");
        var record = await journal.TakeOutAsync(build.Id);

        await using var cut = Elsewhere();
        await cut.AdmitAsync(new BuildRecord(record.Stored, [.. record.StoredEntries.Take(2)], [early], record.Files));
        Assert.IsType<ChainWhole>(await cut.VerifyAsync(build.Id));
        Assert.Equal([SealStanding.Holds, SealStanding.CutOff], (await cut.CheckSealsAsync(build.Id, [late], key.PublicKey)).Select(verdict => verdict.Standing));

        await using var anew = Elsewhere();
        await anew.AdmitAsync(new BuildRecord(record.Stored, [.. record.StoredEntries.Take(1)], [early], record.Files));
        await anew.AppendAsync(build.Id, Drafts.Note("second, and better"));
        await anew.AppendAsync(build.Id, Drafts.Note("third"));
        Assert.IsType<ChainWhole>(await anew.VerifyAsync(build.Id));
        var verdicts = await anew.CheckSealsAsync(build.Id, [late], key.PublicKey);
        Assert.Equal([SealStanding.Holds, SealStanding.Rewritten], verdicts.Select(verdict => verdict.Standing));
        Assert.EndsWith("Entries 1 to 1 are held by an earlier seal.", verdicts[1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sealing_an_unknown_build_or_without_a_name_is_refused()
    {
        var (journal, build) = await StartAsync();
        await using var _ = journal;
        using var key = SealKey.Make();

        await Assert.ThrowsAsync<BuildNotFoundException>(() => journal.SealAsync(Guid.NewGuid(), key, "Ada Example"));
        await Assert.ThrowsAsync<DraftRefusedException>(() => journal.SealAsync(build.Id, key, " "));
        Assert.Empty(await journal.CheckSealsAsync(build.Id, [], null));
    }
}
