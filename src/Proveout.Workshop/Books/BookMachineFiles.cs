using System.Text;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>The files of a machine as a book hands them on.</summary>
/// <param name="Place">What to give to a command that wants the machine: a file, or a folder.</param>
/// <param name="Files">The files.</param>
/// <param name="Fingerprint">Fingerprint that they have there.</param>
internal sealed record BookMachineFiles(string Place, IReadOnlyList<BookFile> Files, string Fingerprint)
{
    private const string Folder = "machine";

    /// <summary>Those of a machine.</summary>
    public static BookMachineFiles Of(LoadedMachine machine)
    {
        var id = PlainNames.Of(Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(Path.GetFullPath(machine.Path)))) is { Length: > 0 } plain ? plain : Folder;
        var taken = new HashSet<string>(StringComparer.Ordinal);
        (string Name, string Text)[] texts =
        [
            .. machine.Texts
                .Select(text => (Name: Free(taken, machine.Texts.Count == 1 ? id : Path.GetFileNameWithoutExtension(text.File)), text.Text))
                .OrderBy(text => text.Name, StringComparer.Ordinal),
        ];
        var place = texts.Length == 1 ? $"{Folder}/{texts[0].Name}" : $"{Folder}/{id}";
        return new(
            place,
            [.. texts.Select(text => new BookFile(texts.Length == 1 ? place : $"{place}/{text.Name}", "application/yaml", Encoding.UTF8.GetBytes(text.Text)))],
            MachineFiles.FingerprintOf(texts));
    }

    private static string Free(HashSet<string> taken, string name)
    {
        var plain = PlainNames.Of(name) is { Length: > 0 } words ? words : Folder;
        var free = $"{plain}.yaml";
        for (var number = 2; !taken.Add(free); number++)
            free = FormattableString.Invariant($"{plain}-{number}.yaml");
        return free;
    }
}
