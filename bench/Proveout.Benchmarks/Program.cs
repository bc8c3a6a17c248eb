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

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
