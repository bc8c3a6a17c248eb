using Proveout.Engine.Electrical;

namespace Proveout.Cli;

/// <summary>What an instrument does to a true resistance.</summary>
internal sealed record MeterShape(string Kind, string Setting, double LeadLowOhms, double LeadHighOhms, IReadOnlyList<MeterRangeShape> Ranges)
{
    public static MeterShape Of(ResistanceMode mode) => new(
        mode.Kind,
        mode.Setting,
        mode.LeadLowOhms,
        mode.LeadHighOhms,
        [.. mode.Ranges.Select(range => new MeterRangeShape(range.FullScale, range.Resolution, range.RelativeError, range.Digits))]);
}

/// <summary>One range of it.</summary>
internal sealed record MeterRangeShape(double FullScale, double Resolution, double RelativeError, double Digits);
