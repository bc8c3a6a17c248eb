using System.Text.Json;

namespace Proveout.Journal;

/// <summary>What every store asks of a measurement.</summary>
internal static class MeasurementRules
{
    public static void Require(MeasurementTaken taken)
    {
        DraftRules.RequireText(taken.Analysis, "The name of the analysis");
        DraftRules.RequireText(taken.Title, "The title of the measurement");
        foreach (var result in taken.Results)
            DraftRules.RequireText(result.Name, "The name of a result");
        if (taken.Results.Any(result => result.Expanded < 0))
            throw new DraftRefusedException("A result of the measurement has a negative uncertainty.");
        if (taken.Sha256.Length == 0 && (taken.FileName.Length > 0 || taken.Length != 0))
            throw new DraftRefusedException($"The data file {taken.FileName} was named but not handed over. Choose the file again.");
        try
        {
            JsonDocument.Parse(taken.InputsJson).Dispose();
        }
        catch (JsonException)
        {
            throw new DraftRefusedException("What was typed for the measurement is not JSON.");
        }
    }
}
