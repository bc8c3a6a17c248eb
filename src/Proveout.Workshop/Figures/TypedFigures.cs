using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads figures that were typed into fields, and collects what is wrong with them.</summary>
/// <param name="typed">Texts by the name of the field.</param>
internal sealed class TypedFigures(IReadOnlyDictionary<string, string> typed)
{
    private readonly List<Diagnostic> _problems = [];

    /// <summary>Everything that is wrong, in the order in which it was read.</summary>
    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>The figure; null when nothing was typed and there is no default, or when what was typed cannot be used.</summary>
    public double? Read(FigureField field)
    {
        var text = typed.GetValueOrDefault(field.Name, "").Trim();
        if (text.Length == 0)
            text = field.Default;
        if (text.Length == 0)
            return null;
        if (!TryNumber(text, field.Unit, out var value))
            Refuse(field, "not-a-figure", $"{Quote.Of(text)} is no figure in {UnitOf(field)}.", $"Write a number such as {Example(field)}.");
        else if (value < field.Least || value > field.Most)
            Refuse(field, "out-of-range", $"{Quote.Of(text)} cannot be.", string.Create(CultureInfo.InvariantCulture, $"It lies between {field.Least} and {field.Most} {field.Unit}.").Replace(" .", ".", StringComparison.Ordinal));
        else if (field.IsWhole && value != Math.Floor(value))
            Refuse(field, "not-whole", $"{Quote.Of(text)} is not a whole number.", "Write a number without digits after the point.");
        else
            return value;
        return null;
    }

    /// <summary>The figure; refused when there is none, with a harmless number in its place, because nothing is computed while something is wrong.</summary>
    public double Require(FigureField field)
    {
        var before = _problems.Count;
        if (Read(field) is { } value)
            return value;
        if (_problems.Count == before)
            Refuse(field, "missing-figure", "It is missing.", field.Hint);
        return 1;
    }

    /// <summary>True when something was typed into a field.</summary>
    public bool Has(FigureField field) => typed.GetValueOrDefault(field.Name, "").Trim().Length > 0;

    /// <summary>Says what is wrong with a field.</summary>
    public void Refuse(FigureField field, string rule, string message, string mend)
    {
        var problem = new Diagnostic(rule, new SourcePlace(field.Label, 0, 0), message, mend);
        if (!_problems.Contains(problem))
            _problems.Add(problem);
    }

    private static bool TryNumber(string text, string unit, out double value)
    {
        var number = unit.Length > 0 && text.EndsWith(unit, StringComparison.Ordinal) ? text[..^unit.Length].TrimEnd() : text;
        return double.TryParse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private static string UnitOf(FigureField field) => field.Unit.Length > 0 ? field.Unit : "plain numbers";

    private static string Example(FigureField field) => field.Default.Length > 0 ? field.Default : "12.5";
}
