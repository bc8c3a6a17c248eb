using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>The text of a random machine, with comments strewn between its lines.</summary>
internal sealed class EditedMachine
{
    public EditedMachine(int seed)
    {
        Design = new RandomMachine(seed).Design();
        var random = new Random(seed);
        var lines = MachineWriter.Write(Design).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Text = string.Concat(lines.Select(line => (random.Next(4) == 0 ? $"{new string(' ', random.Next(5))}# note {random.Next(1000)}\n" : "") + line + "\n"));
        if (random.Next(5) == 0)
            Text = Text.TrimEnd('\n');
        if (random.Next(5) == 0)
            Text = Text.Replace("\n", "\r\n", StringComparison.Ordinal);
    }

    public MachineDesign Design { get; }

    public string Text { get; }

    public AddEdit AddConductor(string id)
    {
        var ends = Design.Parts[0].Type.Terminals.Take(2).Select(terminal => $"{Design.Parts[0].Designation}.{terminal.Name}").ToArray();
        return new(
            new("conductors", id),
            [new("from", EditedValue.Of(ends[0])), new("to", EditedValue.Of(ends[1])), new("section", EditedValue.Of("1 mm2")), new("colour", EditedValue.Of("black")), new("length", EditedValue.Of("1 m"))]);
    }

    /// <summary>The text after some edits; null when one is refused.</summary>
    public static string? Apply(string text, params MachineEdit[] edits) => MachineText.Apply(Files(text), edits).Value?[0].Text;

    /// <summary>The design that a text reads as.</summary>
    public static MachineDesign Read(string text) => MachineReader.Read(Files(text), new([])).Value ?? throw new InvalidOperationException("The text is no machine.");

    /// <summary>A field of a conductor, as it is written.</summary>
    public string WordOf(string conductor, string key)
    {
        var problems = new Problems();
        return ((ScalarNode)EditedFile.Parse(Files(Text)[0], problems)!.Root.Find("conductors")!.Find(conductor)!.Find(key)!).Text;
    }

    public static IReadOnlyList<SourceText> Files(string text) => [new("machine.yaml", text)];

    public static string CommentsOf(string text) =>
        string.Join('\n', text.Split('\n').Select(line => line.Trim()).Where(line => line.StartsWith("# note", StringComparison.Ordinal)));
}
