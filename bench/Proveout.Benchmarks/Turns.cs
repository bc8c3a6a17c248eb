using System.Globalization;
using Proveout.Engine.Electrical;

namespace Proveout.Benchmarks;

/// <summary>Prints what each turn of the flagship's campaign takes in one process: the first compiles, later ones are compiled better and better.</summary>
internal static class Turns
{
    private const int Count = 40;
    private const int Shown = 5;

    public static void Print(TextWriter output, IReadOnlyList<string> count)
    {
        var design = Flagship.Read();
        var turns = count is [var number, ..] ? int.Parse(number, CultureInfo.InvariantCulture) : Count;
        for (var turn = 1; turn <= turns; turn++)
        {
            WiringCampaign campaign = null!;
            var prepare = ProcessorTime.Of(1, () => campaign = new WiringCampaign(design));
            var run = ProcessorTime.Of(1, () => campaign.Run());
            if (turn <= Shown || turn % Shown == 0)
                output.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"turn {turn,3}: prepare {prepare.Processor:0.000} s ({prepare.Elapsed:0.000} s), run {run.Processor:0.000} s ({run.Elapsed:0.000} s)"));
        }
    }
}
