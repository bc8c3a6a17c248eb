using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>Prints how long the design review takes: the flagship, and a machine of ten thousand conductors, rule by rule.</summary>
internal static class ReviewSpeed
{
    // The generated machine has a good quarter of a conductor for each terminal.
    private const int TerminalsFor10000Conductors = 27_000;

    public static void Print(TextWriter output)
    {
        var flagship = Flagship.Read();
        Print(output, "flagship, first time", 1, flagship);
        Print(output, "flagship, warm", 20, flagship);
        var large = GeneratedMachine.Of(Flagship.Catalogue(), TerminalsFor10000Conductors);
        Print(output, "generated", 1, large);
        var made = ProcessorTime.Of(1, () => _ = new ReviewContext(WiringNetworkBuilder.Build(large)));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  what the rules ask, made in {1000 * made.Processor:0} ms of processor time"));
        var context = new ReviewContext(WiringNetworkBuilder.Build(large));
        foreach (var rule in ReviewRules.All)
        {
            var time = ProcessorTime.Of(1, () => _ = rule.Review(context).Count());
            if (time.Processor > 0.01)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {rule.Id}: {1000 * time.Processor:0} ms"));
        }
    }

    private static void Print(TextWriter output, string name, int turns, MachineDesign design)
    {
        var found = 0;
        var time = ProcessorTime.Of(turns, () => found = DesignReview.Of(design).Count);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: {design.Conductors.Count} conductors, {found} findings in {1000 * time.Processor:0} ms of processor time, {1000 * time.Elapsed:0} ms elapsed"));
    }
}
