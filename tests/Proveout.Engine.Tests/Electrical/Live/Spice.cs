using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Text;
using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Live;

/// <summary>A general circuit simulator (ngspice) as oracle. It gets the branches and, for direct current, the modes; whether the modes fit its potentials is for the test to ask.</summary>
internal static class Spice
{
    /// <summary>The program: PROVEOUT_NGSPICE, or what lies on the PATH; null when there is none.</summary>
    public static string? Program =>
        Environment.GetEnvironmentVariable("PROVEOUT_NGSPICE") is { Length: > 0 } given
            ? given
            : Environment.GetEnvironmentVariable("PATH")!.Split(':').Select(folder => Path.Combine(folder, "ngspice")).FirstOrDefault(File.Exists);

    /// <summary>Direct potentials of all nodes, with junctions and sources in the modes of the solution.</summary>
    public static Dictionary<int, double> Direct(LiveSolution solution)
    {
        var text = Head(solution);
        foreach (var branch in solution.Changed.Circuit.Branches)
        {
            var siemens = solution.Changed.Siemens[branch.Index];
            var (a, b) = (Node(branch.A), Node(branch.B));
            switch (branch.Kind)
            {
                case LiveBranchKind.Path or LiveBranchKind.Mains or LiveBranchKind.Contact or LiveBranchKind.Switch:
                    if (solution.Conducts(branch.Index) && branch.A != branch.B)
                        Resistor(text, branch.Index, a, b, 1 / siemens);
                    break;
                case LiveBranchKind.Input when solution.Point.InputSiemens[branch.Index] > 0:
                    Resistor(text, branch.Index, a, b, 1 / solution.Point.InputSiemens[branch.Index]);
                    break;
                case LiveBranchKind.Junction or LiveBranchKind.Supply or LiveBranchKind.Held when solution.Point.Mode[branch.Index] == LivePoint.On:
                    text.AppendLine(Invariant($"V{branch.Index} {a} x{branch.Index} DC {LiveBalance.SetVolts(branch, solution.Point):R}"));
                    Resistor(text, branch.Index, Invariant($"x{branch.Index}"), b, 1 / siemens);
                    break;
                case LiveBranchKind.Supply or LiveBranchKind.Held when solution.Point.Mode[branch.Index] == LivePoint.Limiting:
                    text.AppendLine(Invariant($"I{branch.Index} {b} {a} DC {branch.LimitAmperes:R}"));
                    Resistor(text, branch.Index, a, b, 1e6);
                    break;
            }
        }

        return Run(text, "op").ToDictionary(item => item.Key, item => item.Value.Real);
    }

    /// <summary>Alternating potentials of all nodes at the mains frequency.</summary>
    public static Dictionary<int, Complex> Alternating(LiveSolution solution)
    {
        var text = Head(solution);
        var circuit = solution.Changed.Circuit;
        foreach (var branch in circuit.Branches)
        {
            var siemens = solution.Changed.Siemens[branch.Index];
            var (a, b) = (Node(branch.A), Node(branch.B));
            switch (branch.Kind)
            {
                case LiveBranchKind.Mains:
                    text.AppendLine(Invariant($"V{branch.Index} m{branch.Index} {b} DC 0 AC {branch.Volts}"));
                    text.AppendLine(Invariant($"R{branch.Index} m{branch.Index} l{branch.Index} {circuit.Mains!.LineOhms.Real}"));
                    text.AppendLine(Invariant($"L{branch.Index} l{branch.Index} {a} {circuit.Mains.LineOhms.Imaginary / circuit.RadiansPerSecond:R}"));
                    break;
                case LiveBranchKind.Path or LiveBranchKind.Contact or LiveBranchKind.Switch when solution.Conducts(branch.Index) && branch.A != branch.B:
                    Resistor(text, branch.Index, a, b, 1 / siemens);
                    break;
                case LiveBranchKind.Junction when solution.Point.AcClosed[branch.Index]:
                    Resistor(text, branch.Index, a, b, 1 / siemens);
                    break;
                case LiveBranchKind.Input when branch.FedByMains && solution.Point.InputSiemens[branch.Index] > 0:
                    Resistor(text, branch.Index, a, b, 1 / solution.Point.InputSiemens[branch.Index]);
                    break;
                case LiveBranchKind.Capacitor:
                    text.AppendLine(Invariant($"C{branch.Index} {a} {b} {branch.Farads:R}"));
                    break;
            }
        }

        return Run(text, Invariant($"ac lin 1 {circuit.Mains!.Hertz} {circuit.Mains.Hertz}"));
    }

    private static StringBuilder Head(LiveSolution solution)
    {
        var text = new StringBuilder("live circuit\n.options reltol=1e-3 vntol=1e-3 abstol=1e-2 gmin=1e-15\n");
        for (var node = 0; node < solution.Changed.Circuit.NodeCount; node++)
            text.AppendLine(Invariant($"Rleak{node} {Node(node)} 0 {1 / LiveCircuit.LeakSiemens}"));
        var join = 0;
        foreach (var (a, b, siemens) in solution.Changed.Joins)
            text.AppendLine(Invariant($"Rjoin{join++} {Node(a)} {Node(b)} {1 / siemens:R}"));
        return text;
    }

    private static void Resistor(StringBuilder text, int index, string a, string b, double ohms)
    {
        if (!double.IsInfinity(ohms))
            text.AppendLine(Invariant($"R{index} {a} {b} {ohms:R}"));
    }

    private static Dictionary<int, Complex> Run(StringBuilder text, string analysis)
    {
        text.AppendLine(".control").AppendLine("set numdgt=12").AppendLine(analysis).AppendLine("print all").AppendLine("quit").AppendLine(".endc").AppendLine(".end");
        var file = Path.Combine(Path.GetTempPath(), $"proveout-{Guid.NewGuid():N}.cir");
        File.WriteAllText(file, text.ToString());
        try
        {
            using var process = Process.Start(new ProcessStartInfo(Program!, ["-b", file]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            process.ErrorDataReceived += (_, _) => { };
            process.BeginErrorReadLine();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return Potentials(output);
        }
        finally
        {
            File.Delete(file);
        }
    }

    // Lines such as `n12 = 2.4e+01` or `n12 = 2.3e+02,1.5e-01`.
    private static Dictionary<int, Complex> Potentials(string output)
    {
        var found = new Dictionary<int, Complex>();
        foreach (var line in output.Split('\n'))
        {
            var sides = line.Split('=', 2);
            var name = sides[0].Trim();
            if (sides.Length != 2 || !name.StartsWith('n') || !int.TryParse(name[1..], out var node))
                continue;
            var numbers = sides[1].Split(',').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
            found[node] = new Complex(numbers[0], numbers.Length > 1 ? numbers[1] : 0);
        }

        return found;
    }

    private static string Node(int node) => node < 0 ? "0" : Invariant($"n{node}");

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
