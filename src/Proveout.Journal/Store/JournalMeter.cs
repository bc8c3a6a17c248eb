using System.Diagnostics.Metrics;

namespace Proveout.Journal.Store;

/// <summary>What the journal measures of its work; nobody hears it who does not ask.</summary>
internal static class JournalMeter
{
    private static readonly Meter Meter = new("Proveout.Journal");

    /// <summary>How long it took until an entry was on the disk; its count is that of the entries.</summary>
    public static Histogram<double> Appended { get; } = Meter.CreateHistogram<double>("proveout.journal.append", "s", "From an entry handed over until it is on the disk.");
}
