namespace Proveout.Engine.Machine;

/// <summary>Which thing stands at a place of a machine's files.</summary>
public static class ThingPlaces
{
    /// <summary>The thing at a place; null when none stands there or the files cannot be read.</summary>
    public static EditedThing? At(IReadOnlyList<SourceText> files, SourcePlace place) =>
        EditedFiles.Read(files).Value?.All.FirstOrDefault(file => file.Source.File == place.File) is { } file
            ? (from section in file.Root.Entries.OfType<MappingNode>()
               from entry in section.Entries
               where entry.NamePlace.Line < place.Line || (entry.NamePlace.Line == place.Line && entry.NamePlace.Column <= place.Column)
               orderby entry.NamePlace.Line, entry.NamePlace.Column
               select (EditedThing?)new EditedThing(section.Name, entry.Name)).LastOrDefault()
            : null;
}
