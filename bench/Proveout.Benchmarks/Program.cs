using System.Globalization;
using BenchmarkDotNet.Running;
using Proveout.Benchmarks;
using Proveout.Benchmarks.Workshop;

switch (args)
{
    case ["--compare"]:
        Comparison.Print(Console.Out);
        break;
    case ["--sizes", .. var more]:
        Sizes.Print(Console.Out, more);
        break;
    case ["--beside-sparse", .. var more]:
        Sizes.PrintBesideSparse(Console.Out, more);
        break;
    case ["--keep", var path, .. var more]:
        DictionaryFile.Keep(Console.Out, path, more);
        break;
    case ["--against", var path, .. var more]:
        return DictionaryFile.Compare(Console.Out, path, more) ? 0 : 1;
    case ["--turns", .. var more]:
        Turns.Print(Console.Out, more);
        break;
    case ["--review"]:
        ReviewSpeed.Print(Console.Out);
        break;
    case ["--live", .. var more]:
        LiveSpeed.Print(Console.Out, more);
        break;
    case ["--plan-steps", .. var more]:
        PlanSpeed.Print(Console.Out, more);
        break;
    case ["--keep-live", var path]:
        LiveSpeed.Keep(Console.Out, path);
        break;
    case ["--against-live", var path]:
        return LiveSpeed.Compare(Console.Out, path) ? 0 : 1;
    case ["--pairs", .. var more]:
        PairComparison.Print(Console.Out, more);
        break;
    case ["--plans"]:
        PlanComparison.Print(Console.Out);
        break;
    case ["--diagnosis"]:
        DiagnosisComparison.Print(Console.Out);
        break;
    case ["--fits"]:
        FitSpeed.Print(Console.Out);
        break;
    case ["--sound"]:
        SoundSpeed.Print(Console.Out);
        break;
    case ["--resonance", .. var more]:
        ResonanceComparison.Print(Console.Out, more);
        break;
    case ["--benches", var benches]:
        await WorkshopLoad.PrintAsync(Console.Out, int.Parse(benches, CultureInfo.InvariantCulture), readings: 10);
        break;
    case ["--paced", .. var machines]:
        await PacedBenches.PrintAsync(Console.Out, machines);
        break;
    case ["--long-use", var readings]:
        await LongUse.PrintAsync(Console.Out, int.Parse(readings, CultureInfo.InvariantCulture));
        break;
    case ["--builds", .. var more]:
        await BuildsSpeed.PrintAsync(Console.Out, more);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}

return 0;
