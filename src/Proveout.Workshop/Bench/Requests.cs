namespace Proveout.Workshop;

/// <summary>A machine that a build can be started from.</summary>
/// <param name="Id">Identifier, as in addresses.</param>
/// <param name="Name">Name.</param>
/// <param name="Summary">One or two sentences.</param>
/// <param name="PartCount">Number of parts.</param>
/// <param name="ConductorCount">Number of conductors.</param>
/// <param name="HasMains">True when mains voltage enters the machine.</param>
public sealed record MachineSummary(string Id, string Name, string Summary, int PartCount, int ConductorCount, bool HasMains);

/// <summary>A build.</summary>
/// <param name="Id">Identifier, as in addresses.</param>
/// <param name="Serial">Serial number.</param>
/// <param name="MachineId">The machine it is a build of.</param>
/// <param name="MachineName">That machine's name.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Started">When it was started, in universal time.</param>
public sealed record BuildSummary(string Id, string Serial, string MachineId, string MachineName, string Builder, DateTimeOffset Started);

/// <summary>Asks for a new build.</summary>
/// <param name="MachineId">Of which machine.</param>
/// <param name="Serial">Serial number; may be empty, then one is made.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Instrument">The meter in words, such as "hand-held, 20 Mohm"; may be empty.</param>
public sealed record StartBuild(string MachineId, string Serial, string Builder, string Instrument);

/// <summary>A reading as typed.</summary>
/// <param name="CheckId">At which check.</param>
/// <param name="Text">What was typed: a value, <c>OL</c>, <c>open</c> or <c>-</c>.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form; the same key twice is one entry.</param>
public sealed record ReadingRequest(string CheckId, string Text, string Person, Guid Key);

/// <summary>A check left out.</summary>
/// <param name="CheckId">Which.</param>
/// <param name="Reason">Why.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record SkipRequest(string CheckId, string Reason, string Person, Guid Key);

/// <summary>A difference from the guide or the machine file.</summary>
/// <param name="Subject">What it concerns: a check, a part, a conductor; may be empty.</param>
/// <param name="Note">What differs.</param>
/// <param name="Person">Who says so.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record DeviationRequest(string Subject, string Note, string Person, Guid Key);

/// <summary>A photograph.</summary>
/// <param name="Subject">What it shows: a check, a part; may be empty.</param>
/// <param name="Caption">Words to it.</param>
/// <param name="FileName">Name of the file.</param>
/// <param name="ContentType">Media type; only image/jpeg and image/png are taken, and the bytes must be of that type.</param>
/// <param name="Bytes">The picture.</param>
/// <param name="Person">By whom.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record PhotoRequest(string Subject, string Caption, string FileName, string ContentType, ReadOnlyMemory<byte> Bytes, string Person, Guid Key);

/// <summary>A signature under the record.</summary>
/// <param name="Person">Who.</param>
/// <param name="Role">In which role, such as builder or checker.</param>
/// <param name="Statement">What is stated.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record SignOffRequest(string Person, string Role, string Statement, Guid Key);

/// <summary>A photograph's content.</summary>
/// <param name="ContentType">Media type.</param>
/// <param name="Bytes">The picture.</param>
public sealed record PhotoContent(string ContentType, ReadOnlyMemory<byte> Bytes);
