using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Layout;

/// <summary>How states, shares and times are put in words.</summary>
internal static class Wording
{
    public static string Of(StepStatus status) => status switch
    {
        StepStatus.Passed => "Pass",
        StepStatus.Failed => "Fail",
        StepStatus.CannotTell => "Cannot tell",
        StepStatus.Skipped => "Skipped",
        _ => "To do",
    };

    public static SignShape Sign(StepStatus status) => status switch
    {
        StepStatus.Passed => SignShape.Passed,
        StepStatus.Failed => SignShape.Failed,
        StepStatus.CannotTell => SignShape.CannotTell,
        StepStatus.Skipped => SignShape.Skipped,
        _ => SignShape.Open,
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Shock => "Can give a shock",
        Severity.Fire => "Can start a fire",
        Severity.Damage => "Destroys something",
        Severity.DoesNotWork => "Does not work",
        _ => "Stays hidden",
    };

    /// <summary>True when a person can be hurt.</summary>
    public static bool Hurts(Severity severity) => severity >= Severity.Fire;

    /// <summary>A part of a whole as a percentage, rounded down: it never claims more than there is.</summary>
    public static string PercentOf(int part, int whole) =>
        whole == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(100.0 * part / whole):0} %");

    /// <summary>Minutes in hours and minutes, rounded up to whole ones: the same figure that the words of a plan give.</summary>
    public static string Duration(double minutes)
    {
        var rounded = (int)Math.Ceiling(minutes);
        return (rounded < 60 ? $"{rounded} min" : $"{rounded / 60} h {rounded % 60:00} min").Replace(' ', KeptBlanks.Blank);
    }

    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";

    public static string Time(DateTimeOffset when) => when.UtcDateTime.ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);

    public static string MachineTime(DateTimeOffset when) => when.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
