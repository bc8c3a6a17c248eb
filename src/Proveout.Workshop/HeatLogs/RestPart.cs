using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What a log shows before anything is heated: a room, or a sensor that is of another kind or set wrongly.</summary>
internal static class RestPart
{
    // A machine that has cooled down begins between these.
    private const double ColdestRoom = 5;
    private const double WarmestRoom = 40;

    // Sound sensors of a cold machine agree within this, common practice.
    private const double SameRoomKelvin = 5;

    private const string ColdCompare = "cold-compare";

    /// <summary>Why the warm-up cannot be judged, and which mistakes with the sensor would explain it if the machine was cold; null when it begins as it should.</summary>
    public static (HeatLogPart Part, DiagnosisView? Diagnosis)? Of(LogFile file, HeatedBody body, WarmUpStretch warmUp, double? room)
    {
        var shown = warmUp.FirstCelsius;
        var other = file.WarmUp.Others.Select(series => (series.Name, Celsius: series.Mean.FirstOrDefault(double.IsFinite, double.NaN))).FirstOrDefault(each => Math.Abs(each.Celsius - shown) > SameRoomKelvin);
        var real = room ?? (other.Name is not null && IsRoom(other.Celsius) ? other.Celsius : null);
        var why = room is { } typed && Math.Abs(typed - shown) > SameRoomKelvin ? Text($"it begins at {shown:0.#} °C in a room of {typed:0.#} °C")
            : other.Name is not null ? Text($"it begins at {shown:0.#} °C where `{other.Name}` begins at {other.Celsius:0.#} °C")
            : !IsRoom(shown) ? Text($"it begins at {shown:0.#} °C, which is no room's temperature")
            : null;
        return why is null ? null : (
            BandPart.CannotTell($"{why}: something had not cooled down, the unit is another, or a sensor is of another kind or set wrongly. Let it cool, hold a thermometer beside it, and check the sensor as the page Heat says"),
            real is { } celsius ? SensorOf(body, shown - celsius) : null);
    }

    private static DiagnosisView? SensorOf(HeatedBody body, double difference)
    {
        var dictionary = SensorCampaign.Of(HeatedBodies.SensorOf(body));
        Reading[] readings = [new(ColdCompare, difference)];
        var posterior = Diagnosis.Of(dictionary, readings);
        return BandPart.FailedOf(dictionary, readings[0]) is not { } failed ? null : new DiagnosisView(
            1, [failed], Suspects.Of(dictionary, null, posterior, readings, BandPart.MostSuspects), null)
        {
            Unknown = posterior.Unknown,
        };
    }

    private static bool IsRoom(double celsius) => celsius is >= ColdestRoom and <= WarmestRoom;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
