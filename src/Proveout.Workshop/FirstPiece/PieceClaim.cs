using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What may be claimed of a figure at 95 %: whether it is real, and whether it keeps a limit (as ISO 14253-1 has it).</summary>
/// <param name="Budget">The figure; 0 is as it should be.</param>
/// <param name="Limit">How far from 0 it may be.</param>
internal sealed record PieceClaim(UncertaintyBudget Budget, double Limit)
{
    /// <summary>True when it surely keeps the limit, false when it surely does not, null when that cannot be told.</summary>
    public bool? Keeps => Math.Abs(Budget.Value) + Budget.Expanded <= Limit ? true : Math.Abs(Budget.Value) - Budget.Expanded > Limit ? false : null;

    /// <summary>True when it differs from 0 by more than the noise of measuring.</summary>
    public bool IsReal => Budget.DiffersFrom(0);

    /// <summary>True when it should be corrected: it is real, and not surely within the limit.</summary>
    public bool AsksForMore => IsReal && Keeps != true;

    /// <summary>What was found, in a sentence that begins with what it is about.</summary>
    /// <param name="subject">What it is about, with how it is off.</param>
    /// <param name="again">What to do how many times over to decide.</param>
    public string Sentence(string subject, Func<int, string> again) => (Keeps, IsReal) switch
    {
        (true, true) => $"{subject}: real, but within the limit. Leave it.",
        (true, false) => $"{subject}: within the noise of measuring, and within the limit. Leave it.",
        (false, _) => $"{subject}: real, and surely beyond the limit.",
        (null, true) => $"{subject}: real; whether it is beyond the limit cannot be told. {Deciding(again)}",
        _ => $"{subject}: within the noise of measuring, which is too wide to tell whether it keeps the limit. Do not correct it yet. {Deciding(again)}",
    };

    /// <summary>A figure of a sheet.</summary>
    public static SheetFigure Figure(string name, UncertaintyBudget budget, string unit, double factor = 1) =>
        new(name, unit, View(budget, unit, factor));

    /// <summary>Value and expanded uncertainty at 95 %.</summary>
    public static FigureView View(UncertaintyBudget budget, string unit, double factor = 1)
    {
        var (value, expanded) = (factor * budget.Value, factor * budget.Expanded);
        return new(value, expanded, SensibleDigits.Of(Uncertain.WithExpanded(value, expanded), unit));
    }

    private string Deciding(Func<int, string> again)
    {
        var margin = Math.Abs(Math.Abs(Budget.Value) - Limit);
        if (Budget.TimesToReach(margin) is { } times)
            return $"{again(times)} would decide it.";
        var cause = Budget.Lines.MaxBy(line => double.IsFinite(line.Degrees) ? 0 : line.Contribution)!;
        return cause.Contribution > 0 && !double.IsFinite(cause.Degrees) && 2 * cause.Contribution > margin
            ? $"No number of readings would decide it: the doubt of {cause.Cause} alone is too large. Check that first."
            : string.Create(CultureInfo.InvariantCulture, $"It lies so near the limit that no sensible number of readings would decide it.");
    }
}
