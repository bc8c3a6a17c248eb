using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What every mistake with belts and motors shows at every check, in the form that plan and diagnosis work on.</summary>
public static class DriveCampaign
{
    /// <summary>Simulates every mistake at every check.</summary>
    /// <param name="motion">The design; it has axes that its motors hold.</param>
    public static FaultDictionary Of(MotionDesign motion)
    {
        ArgumentNullException.ThrowIfNull(motion);
        var sound = DriveState.Of(motion, BuiltDrives.AsDesigned(motion));
        DriveCheck[] made = [.. LookChecks.Of(motion), .. new MoveChecks(motion, sound.Drive).All(), .. new MoveSymptoms(motion, sound.Drive).All()];
        Check[] checks = [.. made.Select(check => check.Of(sound))];
        DriveMistake[] mistakes = [.. DriveMistakes.Of(motion).DistinctBy(mistake => mistake.Id)];
        return new(DriveSetUps.All, checks, [.. mistakes.Select(mistake => mistake.ToFault())], [.. mistakes.Select(mistake => ResponseOf(DriveState.Of(motion, mistake.Built), made, checks))]);
    }

    /// <summary>What a person can say of the machine in use, as the symptoms of the same dictionary.</summary>
    public static IReadOnlyList<SeenQuestion> Questions(MotionDesign motion)
    {
        ArgumentNullException.ThrowIfNull(motion);
        return [.. new MoveSymptoms(motion, DriveState.Of(motion, BuiltDrives.AsDesigned(motion)).Drive).Questions()];
    }

    private static FaultResponse ResponseOf(DriveState state, DriveCheck[] made, Check[] checks)
    {
        var changed = made.Index()
            .Select(check => (check.Index, Interval: check.Item.Shown(state)))
            .Where(shown => shown.Interval != checks[shown.Index].Expectation)
            .ToArray();
        return new([.. changed.Select(shown => shown.Index)], [.. changed.Select(shown => shown.Interval)]);
    }
}
