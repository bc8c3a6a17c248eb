using System.Text.Json.Serialization;

namespace Proveout.Workshop;

/// <summary>What a person has to show besides the password.</summary>
/// <param name="Key">The key shared with the person's authenticator. It has to be kept as it is, to compute codes of it.</param>
/// <param name="LastStep">The last step whose code was taken; zero before the first.</param>
/// <param name="Recovery">Hashes of the codes on paper, each in its place; empty where a code was used.</param>
/// <param name="Begun">When the key was made, in universal time.</param>
/// <param name="IsOn">False until a first code has shown that the authenticator has the key; it is not asked for before.</param>
public sealed record SecondFactor(string Key, long LastStep, IReadOnlyList<string> Recovery, DateTimeOffset Begun, bool IsOn)
{
    /// <summary>Wrong codes with the right password or a join code in a row, after which codes of the authenticator are taken no more (NIST SP 800-63B, revision 4, on throttling: 100 at most).</summary>
    public const int MostMisses = 100;

    /// <summary>Wrong codes in a row that came with the right password or a join code.</summary>
    public int Misses { get; init; }

    /// <summary>How many codes on paper are left.</summary>
    [JsonIgnore]
    public int RecoveryLeft => Recovery.Count(hash => hash.Length > 0);

    /// <summary>The factor after a one-time code was taken; null when it is not the code of now, or was taken already.</summary>
    public SecondFactor? After(string typed, DateTimeOffset now) =>
        Misses < MostMisses && OneTimeCodes.FittingStep(new OneTimeKey(Key).Bytes(), typed, now, LastStep) is { } step ? this with { LastStep = step, Misses = 0 } : null;

    /// <summary>The factor after the code on paper of a place was used; null when that place holds another hash by now.</summary>
    public SecondFactor? Without(int place, string hash) =>
        hash.Length > 0 && Recovery.ElementAtOrDefault(place) == hash ? this with { Recovery = [.. Recovery.Select((kept, at) => at == place ? "" : kept)], Misses = 0 } : null;

    /// <summary>No key: it stays out of logs and messages.</summary>
    public override string ToString() => "kept secret";
}
