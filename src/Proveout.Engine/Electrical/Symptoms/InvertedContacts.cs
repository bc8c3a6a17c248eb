namespace Proveout.Engine.Electrical;

/// <summary>Contacts of the other sense, as what they are in one state: closed where the sound machine opens them, open where it closes them.</summary>
/// <remarks>A contact that a coil moves stands as in the sound machine: the mistake alters what the contact does, seldom what its own coil gets.</remarks>
internal static class InvertedContacts
{
    /// <summary>True when any change is one.</summary>
    public static bool AreIn(IReadOnlyList<ElementChange> changes) => changes.Any(change => change is Invert);

    /// <summary>The changes without inverted contacts.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="sound">The sound machine in the state.</param>
    /// <param name="wiring">The wiring.</param>
    public static IReadOnlyList<ElementChange> In(IReadOnlyList<ElementChange> changes, LiveSolution sound, WiringNetwork wiring) =>
        [.. changes.Select(change => change is Invert inverted ? In(wiring.Elements[inverted.Element], sound) : change)];

    private static ElementChange In(NetworkElement contact, LiveSolution sound) => sound.Conducts(contact.Index)
        ? new Cut(contact.Index)
        : new Join(contact.A, contact.B, contact.LowOhms, contact.HighOhms);
}
