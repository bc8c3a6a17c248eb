namespace Proveout.Workshop;

/// <summary>What a person brings to learn a tension.</summary>
/// <param name="Recordings">None, one, or one of each belt of a pair, left first.</param>
/// <param name="Typed">Figures by the names of <see cref="SoundingFields"/>.</param>
public sealed record SoundingRequest(IReadOnlyList<SoundFile> Recordings, IReadOnlyDictionary<string, string> Typed);

/// <summary>A file of sound.</summary>
/// <param name="Name">Its name as the user gave it.</param>
/// <param name="Bytes">Its content.</param>
public sealed record SoundFile(string Name, byte[] Bytes)
{
    /// <summary>Largest file that is read: a minute of two channels at 48 kHz and 24 bits is 17.3 MB.</summary>
    public const int MostBytes = 20_000_000;
}
