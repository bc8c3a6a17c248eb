namespace Proveout.Workshop;

/// <summary>What another build of the machine noted as different from the guide, shown where the next builder comes to it.</summary>
/// <param name="BuildId">The build that noted it.</param>
/// <param name="Serial">Its serial number.</param>
/// <param name="Note">The note: who, when, what it concerns, what differs.</param>
/// <param name="Photos">Photographs that the same build took of the same.</param>
/// <param name="SoToo">Further builds that found it so.</param>
/// <param name="NotSo">Builds that found it not so.</param>
/// <param name="Own">What this build answered; null when it has not.</param>
/// <param name="IsOtherRevision">True when that build was started from another revision of the machine file than this one.</param>
public sealed record DeviationHint(
    string BuildId, string Serial, JournalNote Note, IReadOnlyList<JournalNote> Photos, int SoToo, int NotSo, bool? Own, bool IsOtherRevision)
{
    /// <summary>How many builds found it so, in a sentence.</summary>
    public string Standing =>
        FormattableString.Invariant($"{Builds(1 + SoToo)} found it so{(NotSo > 0 ? FormattableString.Invariant($", {Builds(NotSo)} did not") : "")}.");

    private static string Builds(int count) => FormattableString.Invariant($"{count} {(count == 1 ? "build" : "builds")}");
}
