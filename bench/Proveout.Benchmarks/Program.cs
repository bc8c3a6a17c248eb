using BenchmarkDotNet.Running;
using Proveout.Benchmarks;

if (args is ["--compare"])
{
    Comparison.Print(Console.Out);
    return;
}

if (args is ["--pairs", .. var terminals])
{
    PairComparison.Print(Console.Out, terminals);
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
