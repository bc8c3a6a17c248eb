using Proveout.Engine.Machine;

namespace Proveout.Publish.Report;

/// <summary>The record of one build as a document for people. Neutral: every writer writes the same content from it.</summary>
/// <param name="Machine">Name of the machine.</param>
/// <param name="Summary">What it is.</param>
/// <param name="Fingerprint">Fingerprint of the machine file, hexadecimal.</param>
/// <param name="Serial">Serial number of the build.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Started">When the build was started, in universal time.</param>
/// <param name="Written">When this report was written, in universal time.</param>
/// <param name="Instruments">What was measured with, an instrument each.</param>
/// <param name="Cautions">What can hurt, a sentence each; stands before the checks.</param>
/// <param name="Rows">The checks in the order to do them.</param>
/// <param name="Deviations">Where the build differs from the guide or the machine file, and photographs.</param>
/// <param name="Coverage">Faults by kind, and how many the checks surely catch.</param>
/// <param name="NotCovered">What no check here can tell, worst first.</param>
/// <param name="SignOffs">Signatures given so far.</param>
/// <param name="LastHash">Hash of the journal's last entry, hexadecimal.</param>
/// <param name="EntryCount">How many entries the journal has.</param>
public sealed record ReportModel(
    string Machine,
    string Summary,
    string Fingerprint,
    string Serial,
    string Builder,
    DateTimeOffset Started,
    DateTimeOffset Written,
    ValueList<string> Instruments,
    ValueList<string> Cautions,
    ValueList<ReportRow> Rows,
    ValueList<ReportDeviation> Deviations,
    ValueList<ReportCoverage> Coverage,
    ValueList<ReportGap> NotCovered,
    ValueList<ReportSignOff> SignOffs,
    string LastHash,
    long EntryCount)
{
    /// <summary>What the plan's checks, all of them done, say of two mistakes made together; null when that was not simulated.</summary>
    public ReportPairs? Pairs { get; init; }

    /// <summary>What the record does not say; stands in every report.</summary>
    public const string NotASafetyStatement =
        "Proveout does not say that this machine is safe. It says what was measured, which mistakes the checks would have caught, " +
        "and which they would not. Local codes and licensed practice come first.";

    /// <summary>How many checks ended with a verdict.</summary>
    public int Count(ReportVerdict verdict) => Rows.Count(row => row.Verdict == verdict);
}
