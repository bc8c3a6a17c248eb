using System.Globalization;

namespace Proveout.Engine.Machine;

/// <summary>A cell as it stands in the file.</summary>
/// <param name="Text">Its text without quotes and the blanks around it.</param>
/// <param name="Column">Where it begins, counted from 1.</param>
/// <param name="IsClosed">False when a quotation mark opens and none closes.</param>
internal readonly record struct TableCell(string Text, int Column, bool IsClosed = true)
{
    private static readonly string[] Nothing = ["", "-", "–", "—", "nan", "n/a", "na", "null", "none"];

    /// <summary>True when the cell says that there is no number.</summary>
    public bool IsMissing => Nothing.Contains(Text, StringComparer.OrdinalIgnoreCase);

    /// <summary>True when it is a number with a comma in it.</summary>
    public bool HasDecimalComma => Text.Contains(',', StringComparison.Ordinal);

    /// <summary>Its number; null when it is none, or when comma and point both stand in it and nobody can know which is which.</summary>
    public double? Number
    {
        get
        {
            if (Text.Count(letter => letter == ',') > 1 || (HasDecimalComma && Text.Contains('.', StringComparison.Ordinal)))
                return null;
            var plain = Text.Replace(',', '.').Replace('−', '-');
            return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
        }
    }
}
