using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts a dictionary and its plan into a table of mistakes.</summary>
internal static class MistakeTables
{
    /// <summary>The fewest checks that surely catch all that can be caught, and what each mistake does.</summary>
    public static MistakeTable Of(FaultDictionary dictionary) => Of(dictionary, CheckPlan.Of(dictionary), check => CheckWords.Expected(check));

    /// <summary>A plan's checks, and what each mistake does; only set-ups that a check is made in.</summary>
    /// <param name="dictionary">The dictionary.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="expected">What a check should read, in words.</param>
    public static MistakeTable Of(FaultDictionary dictionary, CheckPlan plan, Func<Check, string> expected) => new(
        [.. dictionary.SetUps.Where(setUp => plan.Checks.Any(check => dictionary.Checks[check].SetUp == setUp.Id))],
        [.. plan.Checks.Select(check => new ExpectedCheck(dictionary.Checks[check], expected(dictionary.Checks[check])))],
        [
            .. dictionary.Faults.Index()
                .OrderByDescending(fault => fault.Item.Severity)
                .Select(fault => new MistakeRow(
                    fault.Item,
                    [.. plan.Checks.Where(check => dictionary.IsSurelyCaught(fault.Index, check)).Select(check => dictionary.Checks[check].Title)])),
        ]);
}
