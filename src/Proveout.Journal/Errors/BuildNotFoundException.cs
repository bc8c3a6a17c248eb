namespace Proveout.Journal;

/// <summary>There is no build of this identifier.</summary>
public sealed class BuildNotFoundException : JournalException
{
    internal BuildNotFoundException(Guid buildId)
        : base($"There is no build {buildId} in this journal. List the builds and choose one of them.") => BuildId = buildId;

    /// <summary>The identifier that was asked for.</summary>
    public Guid BuildId { get; }
}
