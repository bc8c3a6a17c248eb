using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Machines of a few lines, from the catalogue of the repository and types of their own.</summary>
internal static class SmallMachine
{
    public const string Mains = "mains: {voltage: 230 V, frequency: 50 Hz, earthing: TN-S}";

    /// <summary>Reads a machine.</summary>
    /// <param name="parts">Lines below <c>parts:</c>.</param>
    /// <param name="conductors">Lines below <c>conductors:</c>.</param>
    /// <param name="types">Lines below <c>types:</c>.</param>
    /// <param name="routes">Lines below <c>routes:</c>.</param>
    /// <param name="mains">The line of the mains; none when empty.</param>
    public static MachineDesign Read(string parts, string conductors = "", string types = "", string routes = "", string mains = "")
    {
        var text = $"""
            format: proveout-machine 1
            machine:
              name: Small
              summary: For a test.
            {Indent(mains)}
            {Section("types", types)}
            {Section("parts", parts)}
            {Section("routes", routes)}
            {Section("conductors", conductors)}
            """;
        var outcome = MachineReader.Read([new SourceText("small.yaml", text)], Repository.Catalogue);
        return outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics));
    }

    private static string Section(string name, string lines) => lines.Length == 0 ? "" : $"{name}:{Environment.NewLine}{Indent(lines)}";

    private static string Indent(string lines) =>
        string.Join(Environment.NewLine, lines.Split('\n').Select(line => "  " + line));
}
