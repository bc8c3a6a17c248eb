using Proveout.Engine.Machine;

namespace Proveout.Publish.Report;

/// <summary>Mistakes that hide each other when two are made together.</summary>
/// <param name="Summary">How many pairs there are and what becomes of them, in sentences.</param>
/// <param name="Worst">The most dangerous of those that hide each other.</param>
/// <param name="More">How many further pairs hide each other.</param>
public sealed record ReportPairs(string Summary, ValueList<ReportGap> Worst, int More);
