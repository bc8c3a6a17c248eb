using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Fuzz;

/// <summary>What reads machine files, catalogue files and wire lists.</summary>
internal static class MachineTargets
{
    private const string WiredMachine = "tests/cases/review/fuse-bears-load/pass.yaml";

    private static readonly IReadOnlyList<byte[]> Yaml =
    [
        .. new[]
        {
            "&a ", "*a", "!!str ", "!!binary ", "!<x> ", "<<: *a", "? ", "- ", "{", "}", "[", "]", "|", "|+", ">-", "%YAML 1.2\n", "%TAG ! x\n", "---\n", "...\n", "# ", ": ", "\"", "'", "\\u0000", "\\x1b",
            "\r\n", "\t", "~", "null", "true", "no", "0o17", "2001-01-01", ".inf", ".nan",
        }.Select(Encoding.UTF8.GetBytes),
    ];

    private static readonly MachineFiles Files = new(Path.Combine(Corpus.Root, "catalogue"));

    private static readonly IReadOnlyList<SourceText> Wired = MachineFiles.Texts(Path.Combine(Corpus.Root, WiredMachine)).Value!;

    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("machine", Machine) { Tokens = Yaml },
        new("catalogue", Catalogue) { Tokens = Yaml },
        new("edits", Edits) { Tokens = Yaml },
        new("wires", Wires),
    ];

    /// <summary>Reads a machine file; null when it is none.</summary>
    public static LoadedMachine? Load(byte[] input, out string told)
    {
        var text = SourceText.Decode("machine.yaml", input);
        var read = text.Value is null ? Outcome.Refused<LoadedMachine>(text.Diagnostics) : Files.Read([text.Value], "machine.yaml");
        told = Told.Of(read);
        return read.Value;
    }

    private static string Machine(byte[] input) => Load(input, out var told) is not { } machine ? told
        : string.Create(null, stackalloc char[64], $"{told} {Size(machine.Design.Parts.Count)} {Size(machine.Design.Conductors.Count)} {Size(machine.Design.Bays.Count)} {Size(machine.Design.Later.Count)}");

    private static string Catalogue(byte[] input)
    {
        var text = SourceText.Decode("catalogue.yaml", input);
        return text.Value is null ? Told.Of(text.Diagnostics) : Told.Of(CatalogueReader.Read([text.Value]));
    }

    // A change of a machine that was read must leave a file that can be read, or be refused.
    private static string Edits(byte[] input)
    {
        var parts = Told.Parts(input);
        var text = SourceText.Decode("machine.yaml", Encoding.UTF8.GetBytes(parts[""]));
        if (text.Value is null)
            return Told.Of(text.Diagnostics);
        var told = new List<string>();
        foreach (var line in parts.GetValueOrDefault("edits", "").Split('\n', StringSplitOptions.RemoveEmptyEntries).Take(20))
        {
            if (EditOf(line.Split('|')) is { } edit)
                told.Add(Told.Of(MachineText.Apply([text.Value], [edit])));
        }

        return string.Join(' ', told.Distinct(StringComparer.Ordinal));
    }

    private static MachineEdit? EditOf(string[] words) => words switch
    {
        ["set", var section, var name, var field, var value] => new FieldEdit(new(section, name), [field], EditedValue.Of(value)),
        ["add", var section, var name, var field, var value] => new AddEdit(new(section, name), [new EditedField(field, EditedValue.Of(value))]),
        ["remove", var section, var name] => new RemoveEdit(new(section, name)),
        ["rename", var section, var name, var next] => new RenameEdit(new(section, name), next),
        _ => null,
    };

    private static string Wires(byte[] input) => Told.Of(new WireImports(Files).Of(Wired, WiredMachine, new NamedText("wires.csv", Told.Text(input)), input.Length % 2 == 0));

    private static int Size(int count) => Math.Min(count, 4);
}
