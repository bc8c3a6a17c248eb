using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

/// <summary>A copy of a sample in a temporary folder, with an editor over it.</summary>
internal sealed class EditFixture : IDisposable
{
    public const string Id = "pennywort";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-edit-");

    public EditFixture()
    {
        Machine = Path.Combine(_folder.FullName, Id);
        Directory.CreateDirectory(Machine);
        foreach (var file in Directory.EnumerateFiles(Samples.PathOf(Id), "*.yaml"))
            File.Copy(file, Path.Combine(Machine, Path.GetFileName(file)));
        (Shelf, Desk) = Open();
    }

    public string Machine { get; }

    public MachineShelf Shelf { get; }

    public EditDesk Desk { get; }

    public string Own => Path.Combine(_folder.FullName, "own");

    public EditView View => Desk.View(Id)!;

    /// <summary>Another process over the same folder.</summary>
    public (MachineShelf Shelf, EditDesk Desk) Open()
    {
        var shelf = new MachineShelf(Samples.Files, [Machine, Samples.PathOf("quarrymoor")], Own);
        return (shelf, new EditDesk(Samples.Files, shelf, new EditPlaces(Own, Path.Combine(Samples.Root, "samples")), TimeProvider.System));
    }

    public SaveAnswer Paint(string conductor, string colour, int? seen = null, string person = "Ada") => Desk.Save(
        Id, new SaveEdits(seen ?? View.Revision, [new FieldEdit(new("conductors", conductor), ["colour"], EditedValue.Of(colour))], person));

    /// <summary>The whole text on the disk.</summary>
    public string Text => string.Concat(Directory.EnumerateFiles(Machine, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText));

    public ConductorColour ColourOf(string conductor) => View.Design.Conductors.Single(each => each.Id == conductor).Colour;

    public void Dispose() => _folder.Delete(recursive: true);
}
