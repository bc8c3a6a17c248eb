namespace Proveout.Journal;

/// <summary>Another build of the machine has this serial number; nothing was written.</summary>
public sealed class SerialTakenException : JournalException
{
    internal SerialTakenException(Build holder)
        : base($"Serial number {holder.Serial} of {holder.MachineName} is already that of build {holder.Id}. "
            + "Open that build, or give this one another serial number.") => Holder = holder;

    /// <summary>The build that has the number.</summary>
    public Build Holder { get; }
}
