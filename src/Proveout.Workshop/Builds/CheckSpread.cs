using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Workshop;

/// <summary>How the builds of a machine read one check.</summary>
/// <param name="Check">The check.</param>
/// <param name="Expected">What it should read.</param>
/// <param name="Builds">Builds that have read it.</param>
/// <param name="OverRange">Of these, how many read over range.</param>
/// <param name="Skipped">Builds that left it out.</param>
/// <param name="Failed">Builds in which a reading of it failed, mended since or not.</param>
/// <param name="Spread">Middle and spread of the readings with a value; null when there are none.</param>
/// <param name="SpreadWords">The same in words and units; empty when there are none.</param>
/// <param name="Apart">Readings that do not belong to the others, furthest first; null when there are too few to tell.</param>
/// <param name="Told">What is said of them, in a sentence.</param>
public sealed record CheckSpread(
    Check Check,
    string Expected,
    int Builds,
    int OverRange,
    int Skipped,
    int Failed,
    RobustSpread? Spread,
    string SpreadWords,
    IReadOnlyList<ReadingApart>? Apart,
    string Told);
