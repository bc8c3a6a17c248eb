namespace Proveout.Workshop;

/// <summary>The figures that go with a log, read.</summary>
internal sealed record HeatLogFigures(double? FullOutput, double? Room, double? Target, double From, double To, int? Run)
{
    public static HeatLogFigures Read(TypedFigures typed)
    {
        var (from, to) = (typed.Read(HeatLogFields.From) ?? 0, typed.Read(HeatLogFields.To) ?? double.PositiveInfinity);
        if (to <= from)
            typed.Refuse(HeatLogFields.To, "nothing-left", "Nothing is left between both times.", "Give a later one.");
        return new(typed.Read(HeatLogFields.FullOutput), typed.Read(HeatLogFields.Room), typed.Read(HeatLogFields.Target), from, to, (int?)typed.Read(HeatLogFields.Run));
    }
}
