using System.Text;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Readings of a build as a text file: a check and what was typed on each line, separated by a tab.</summary>
public static class ReadingsFile
{
    private const string FirstLine = "proveout-readings 1";

    /// <summary>Writes readings, a line each.</summary>
    public static string Write(IEnumerable<(string CheckId, string Text)> readings)
    {
        var text = new StringBuilder(FirstLine).Append('\n');
        foreach (var (check, typed) in readings)
            text.Append(check).Append('\t').Append(typed).Append('\n');
        return text.ToString();
    }

    /// <summary>Reads readings; null when the text is no such file.</summary>
    public static IReadOnlyList<(string CheckId, string Text)>? Read(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length == 0 || lines[0] != FirstLine)
            return null;
        var fields = lines.Skip(1).Select(line => line.Split('\t')).ToArray();
        return Array.TrueForAll(fields, field => field.Length == 2) ? [.. fields.Select(field => (field[0], field[1]))] : null;
    }

    /// <summary>The readings as evidence, each in the unit of its check; those that cannot be read are left out.</summary>
    public static IReadOnlyList<Reading> AsEvidence(FaultDictionary dictionary, IEnumerable<(string CheckId, string Text)> readings) =>
    [
        .. from reading in readings
           let check = dictionary.IndexOfCheck(reading.CheckId)
           let value = check is null ? null : ReadingText.TryRead(reading.Text, dictionary.Checks[check.Value].Unit)
           where value is not null
           select new Reading(reading.CheckId, value.Value),
    ];
}
