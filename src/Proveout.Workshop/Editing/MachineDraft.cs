namespace Proveout.Workshop;

/// <summary>A text that somebody entered and that cannot be the machine yet.</summary>
/// <param name="Number">Its number; each machine counts from 1.</param>
/// <param name="Base">Number of the revision that it was begun from.</param>
/// <param name="Time">When it was kept.</param>
/// <param name="Person">Who entered it; empty when nobody said.</param>
/// <param name="Continues">Number of the draft that it goes on from; 0 when it goes on from none.</param>
/// <param name="Files">The files as entered.</param>
public sealed record MachineDraft(int Number, int Base, DateTimeOffset Time, string Person, int Continues, IReadOnlyList<NamedText> Files)
{
    /// <summary>Number of the revision that it became; 0 while it is open.</summary>
    public int Became { get; init; }
}
