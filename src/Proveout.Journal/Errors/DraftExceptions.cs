namespace Proveout.Journal;

/// <summary>There is no build of this identifier.</summary>
public sealed class BuildNotFoundException : JournalException
{
    internal BuildNotFoundException(Guid buildId)
        : base($"There is no build {buildId} in this journal. List the builds and choose one of them.") => BuildId = buildId;

    /// <summary>The identifier that was asked for.</summary>
    public Guid BuildId { get; }
}

/// <summary>A draft that cannot be recorded as it is; nothing was written.</summary>
public sealed class DraftRefusedException : JournalException
{
    internal DraftRefusedException(string sentence)
        : base(sentence)
    {
    }
}

/// <summary>A key, or the identifier of a build, was used before for something else; nothing was written.</summary>
public sealed class KeyReusedException : JournalException
{
    internal KeyReusedException(Guid key, string takenBy)
        : base($"The key {key} already belongs to {takenBy}, which says something else. Make a new key for each thing to record.") => Key = key;

    /// <summary>The key.</summary>
    public Guid Key { get; }
}

/// <summary>Another build of the machine has this serial number; nothing was written.</summary>
public sealed class SerialTakenException : JournalException
{
    internal SerialTakenException(Build holder)
        : base($"Serial number {holder.Serial} of {holder.MachineName} is already that of build {holder.Id}. "
            + "Open that build, or give this one another serial number.") => Holder = holder;

    /// <summary>The build that has the number.</summary>
    public Build Holder { get; }
}

/// <summary>A correction that refers to nothing it could correct; nothing was written.</summary>
public sealed class CorrectionRefusedException : JournalException
{
    internal CorrectionRefusedException(int corrects, string why)
        : base($"Entry {corrects} cannot be corrected: {why} Correct an entry that holds a reading of the same check.") => Corrects = corrects;

    /// <summary>The sequence that the correction refers to.</summary>
    public int Corrects { get; }
}
