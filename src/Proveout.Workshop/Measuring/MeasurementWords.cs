using Proveout.Engine.Motion;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>A measurement in plain words, for the record and the report.</summary>
internal static class MeasurementWords
{
    /// <summary>Title, summary, figures, and where the numbers came from.</summary>
    public static string Of(MeasurementTaken taken) => string.Join(" ", Sentences(taken));

    private static IEnumerable<string> Sentences(MeasurementTaken taken)
    {
        yield return $"Measured: {taken.Title}.";
        if (taken.Summary.Length > 0)
            yield return taken.Summary;
        if (taken.Results.Count > 0)
            yield return $"{string.Join("; ", taken.Results.Select(Figure))}.";
        if (taken.FileName.Length > 0)
            yield return $"Data file {taken.FileName}, SHA-256 {taken.Sha256[..12]}….";
    }

    private static string Figure(MeasuredResult result) => result.Expanded > 0
        ? $"{result.Name} {SensibleDigits.Of(Uncertain.WithExpanded(result.Value, result.Expanded), result.Unit)}"
        : $"{result.Name} {SensibleDigits.Of(result.Value)} {result.Unit}".TrimEnd();
}
