using BenchmarkDotNet.Running;
using Proveout.Benchmarks;

if (args is ["--compare"])
{
    Comparison.Print(Console.Out);
    return;
}

if (args is ["--diagnosis"])
{
    DiagnosisComparison.Print(Console.Out);
    return;
}

if (args is ["--sizes"])
{
    Sizes.Print(Console.Out);
    return;
}

if (args is ["--plans"])
{
    PlanComparison.Print(Console.Out);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
