using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Makes the walk round a machine.</summary>
public static class WalkRound
{
    /// <summary>The walk, with what it covers beyond the plan.</summary>
    public static WalkView Of(PlannedMachine planned)
    {
        var observations = new ObservationCampaign(planned.Campaign.Context);
        var uncaught = planned.Plan.Uncaught.Select(fault => planned.Campaign.Faults[fault]).ToArray();
        var showing = uncaught.Select(observations.ShowingOf).ToArray();
        var dictionary = observations.Run();
        var shows = showing.SelectMany(checks => checks.Select(check => check.Id))
            .Concat(Enumerable.Range(0, dictionary.Faults.Count).SelectMany(fault => dictionary.ChecksThatCatch(fault).Select(check => dictionary.Checks[check].Id)))
            .CountBy(id => id)
            .ToDictionary(StringComparer.Ordinal);
        return new WalkView(
            planned.Machine.Summary,
            [
                .. observations.SetUps.Select(setUp => new WalkPlace(
                    setUp,
                    [
                        .. observations.Checks
                            .Where(check => check.SetUp == setUp.Id)
                            .Select(check => new WalkCheck(check, CheckWords.Expected(check), shows.GetValueOrDefault(check.Id))),
                    ])),
            ],
            observations.Faults.Count,
            uncaught.Length,
            showing.Count(checks => checks.Count > 0));
    }
}
