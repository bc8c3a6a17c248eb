namespace Proveout.Journal;

/// <summary>One physical machine with a serial number, made after a machine file. Its record never changes once started.</summary>
/// <param name="Id">Chosen by whoever starts the build; a version 7 identifier sorts by time.</param>
/// <param name="Serial">Serial number as written on the machine; unique among the builds of one machine.</param>
/// <param name="MachineName">Name of the machine in the machine file.</param>
/// <param name="MachineFingerprint">SHA-256 of the text of the machine file, 64 lower-case hexadecimal digits.</param>
/// <param name="Builder">Person or workshop that builds it.</param>
/// <param name="Started">When the build was started, UTC.</param>
public sealed record Build(
    Guid Id, string Serial, string MachineName, string MachineFingerprint, string Builder, DateTimeOffset Started);
