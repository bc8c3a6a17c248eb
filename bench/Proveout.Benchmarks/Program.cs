using BenchmarkDotNet.Running;
using Proveout.Benchmarks;

switch (args)
{
    case ["--compare"]:
        Comparison.Print(Console.Out);
        break;
    case ["--sizes"]:
        Sizes.Print(Console.Out);
        break;
    case ["--review"]:
        ReviewSpeed.Print(Console.Out);
        break;
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
    case ["--builds", .. var more]:
        await BuildsSpeed.PrintAsync(Console.Out, more);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
