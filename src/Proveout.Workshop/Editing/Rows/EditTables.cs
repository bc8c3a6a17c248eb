using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The sections of a machine as tables.</summary>
public static class EditTables
{
    /// <summary>A section's table; null when the section is none that is edited row by row.</summary>
    /// <param name="view">The machine.</param>
    /// <param name="section">The section.</param>
    /// <param name="find">Only rows that hold this text, in whatever letters; all when empty.</param>
    public static EditTable? Of(EditView view, string section, string find)
    {
        ArgumentNullException.ThrowIfNull(view);
        (string Title, string One, (string Head, string Path)[] Columns)? table = section switch
        {
            EditedThing.Parts => ("Parts", "part", [("What it is for", "name"), ("Type", "type"), ("Where", "place"), ("Mounted on", "mounted on")]),
            EditedThing.Conductors => ("Conductors", "conductor", [("From", "from"), ("To", "to"), ("Section", "section"), ("Colour", "colour"), ("Length", "length"), ("Through", "route")]),
            EditedThing.Routes => ("Routes", "route", [("Kind", "kind"), ("On", "on"), ("Length", "length"), ("Note", "note")]),
            _ => null,
        };
        return table is not var (title, one, columns) ? null : new(
            section,
            title,
            one,
            ["Name", .. columns.Select(column => column.Head)],
            [
                .. from thing in FieldTexts.OfSection(view.Files, section)
                   let row = new EditRow(thing.Name, [.. columns.Select(column => thing.Texts.GetValueOrDefault(column.Path, ""))], view.Of(thing.Name).Count)
                   where find.Length == 0 || row.Cells.Prepend(row.Name).Any(cell => cell.Contains(find, StringComparison.OrdinalIgnoreCase))
                   select row,
            ]);
    }

    /// <summary>Where a subject of a finding is edited: its section and row; null when it is no row.</summary>
    public static EditedThing? Find(MachineDesign design, string subject)
    {
        ArgumentNullException.ThrowIfNull(design);
        var part = subject.Split('.')[0];
        return design.Conductors.Any(conductor => conductor.Id == subject) ? new(EditedThing.Conductors, subject)
            : design.Parts.Any(each => each.Designation == part) ? new(EditedThing.Parts, part)
            : design.Routes.Any(route => route.Name == subject) ? new(EditedThing.Routes, subject)
            : null;
    }

    /// <summary>The next free name of a section's rows, counted on from the highest number behind the most usual letters; empty when names follow no such rule.</summary>
    public static string NextName(MachineDesign design, string section)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (section != EditedThing.Conductors)
            return "";
        var numbers = design.Conductors
            .Select(conductor => (Letters: conductor.Id.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9'), conductor.Id))
            .Where(name => name.Letters.Length > 0 && int.TryParse(name.Id.AsSpan(name.Letters.Length), out _))
            .GroupBy(name => name.Letters, name => int.Parse(name.Id.AsSpan(name.Letters.Length), provider: null), StringComparer.Ordinal)
            .MaxBy(group => group.Count());
        return numbers is null ? "W1" : FormattableString.Invariant($"{numbers.Key}{numbers.Max() + 1}");
    }
}
