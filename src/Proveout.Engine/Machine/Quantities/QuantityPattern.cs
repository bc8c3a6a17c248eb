namespace Proveout.Engine.Machine;

/// <summary>
/// Regular expressions of the quantities, for editors that check a file by its schema; in the part of the syntax that .NET and ECMA 262 share.
/// They accept whatever the reader accepts; that a value is above zero and limits are in order is the reader's to say.
/// </summary>
internal static class QuantityPattern
{
    private const string Number = @"\+?([0-9]+([.,][0-9]+)?|[.,][0-9]+)([eE][+-][0-9]+)?";
    private const string ValueCode = "([0-9]+[RrKkMGT][0-9]*|[RrKkMGT][0-9]+)";
    private const string Space = @"\s*";

    public static readonly string Resistance = Whole(ResistancePart);

    public static readonly string Section = Whole($"({QuantityOf(Measure.Area)}|[Aa][Ww][Gg]{Space}[0-9]+)");

    public static readonly string VoltageSpan = Whole($@"{QuantityOf(Measure.Voltage)}{Space}\.\.{Space}{QuantityOf(Measure.Voltage)}");

    public static readonly string Band = Whole(
        $@"{ResistancePart}{Space}((\+-|±|\+/-){Space}{Number}{Space}%|\.\.{Space}({ResistancePart}{Space}\.\.{Space})?({ResistancePart}|open))");

    private static string ResistancePart => $"({QuantityOf(Measure.Resistance)}|{ValueCode})";

    /// <summary>The pattern of a number and a unit.</summary>
    public static string Of(Measure measure) => Whole(QuantityOf(measure));

    private static string QuantityOf(Measure measure) =>
        $"{Number}{Space}({string.Join('|', measure.Units.Select(unit => WithOtherSigns(unit.Text)))})";

    private static string WithOtherSigns(string unit) => unit
        .Replace("ohm", "(ohm|Ohm|OHM|\u03A9|\u2126)", StringComparison.Ordinal)
        .Replace("u", "[u\u00B5\u03BC]", StringComparison.Ordinal)
        .Replace("2", "[2²]", StringComparison.Ordinal);

    private static string Whole(string pattern) => $"^{Space}{pattern}{Space}$";
}
