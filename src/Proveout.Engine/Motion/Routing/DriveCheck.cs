using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>A check of belts and motors: how it is done, and what it may show in a state.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="Kind">Kind of check.</param>
/// <param name="SetUp">The set-up.</param>
/// <param name="Title">A few words.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="Unit">Unit of its readings.</param>
/// <param name="Why">Why it shows what it shows.</param>
/// <param name="CostSeconds">Time it takes.</param>
/// <param name="Shown">What it may show.</param>
internal sealed record DriveCheck(
    string Id, string Kind, SetUp SetUp, string Title, string Instruction, string Unit, string Why, double CostSeconds, Func<DriveState, ReadingInterval> Shown)
{
    public Check Of(DriveState sound) => new(Id, Kind, SetUp.Id, Title, Instruction, [], Unit, Shown(sound), Why, CostSeconds);

    /// <summary>A value read with a tolerance.</summary>
    public static ReadingInterval Around(double value, double tolerance) => new(value - tolerance, value + tolerance);

    /// <summary>A count, or a numbered outcome.</summary>
    public static ReadingInterval Exactly(double value) => new(value, value);
}
