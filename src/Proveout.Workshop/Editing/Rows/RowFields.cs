using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The fields of each kind of row, in the order in which they are asked for.</summary>
public static class RowFields
{
    private static readonly RowField[] Head =
    [
        new("name", "Name of the machine", "") { IsNeeded = true },
        new("summary", "Summary", "One or two sentences on what it is."),
        new("mains voltage", "Mains voltage", "Between line and neutral, such as 230 V. Leave all of the mains empty when none enters the machine."),
        new("mains frequency", "Mains frequency", "Such as 50 Hz."),
        new("mains earthing", "Earthing of the mains", "IEC 60364-1.") { Words = ["TN-S", "TN-C-S", "TT", "IT"] },
        new("mains residual-current", "Residual-current device of the outlet", "Its rated residual current when it is known, such as 30 mA."),
    ];

    private static readonly RowField[] Parts =
    [
        new("type", "Type", "Begin to type, and choose.") { Choices = RowChoices.Types, IsNeeded = true },
        new("name", "What it is for", "") { IsNeeded = true },
        new("place", "Where it sits, in words", ""),
        new("mounted on", "Mounted on", "A surface, a rail, or another part.") { Choices = RowChoices.Mounts },
        new("mounted at", "At", "On a surface: across and up to its lower left corner, such as 40 x 120 mm."),
        new("mounted along", "Along", "On a rail: from its beginning, such as 60 mm."),
        new("mounted turned", "Turned", "Quarter turns, as the drawing shows it."),
        new("size", "Its own size", "Where it differs from its type's, such as 80 x 60 mm."),
        new("reach", "Reach", "From the end of its routes to its terminals, such as 50 mm."),
        new("slack", "Spare length", "What each conductor keeps at it, such as 40 mm."),
    ];

    private static readonly RowField[] Conductors =
    [
        new("from", "From", "Part, full stop, terminal.") { Choices = RowChoices.Terminals, IsNeeded = true },
        new("to", "To", "Part, full stop, terminal.") { Choices = RowChoices.Terminals, IsNeeded = true },
        new("section", "Cross-section", "Such as 0.5 mm2 or AWG 20.") { IsNeeded = true },
        new("colour", "Colour", "") { Words = FieldWords.Colours, IsNeeded = true },
        new("length", "Length", "Such as 300 mm. Leave it empty where it follows from places and routes."),
        new("route", "Through", "Routes in order, commas between.") { Kind = RowValue.List, Choices = RowChoices.Routes },
        new("strands", "Strands", "IEC 60228.") { Words = FieldWords.Strands },
        new("from-end", "First end", "How it is dressed.") { Words = FieldWords.Ends },
        new("to-end", "Second end", "How it is dressed.") { Words = FieldWords.Ends },
        new("insulation", "Insulation rated for", "Such as 600 V."),
        new("diameter", "Diameter over insulation", "Such as 2.1 mm."),
        new("cable", "Core of cable", "Name of the cable."),
        new("flexing", "Rated for flexing", "") { Kind = RowValue.Flag },
        new("labelled", "Carries a label", "") { Kind = RowValue.Flag },
    ];

    private static readonly RowField[] Routes =
    [
        new("kind", "Kind", "") { Words = FieldWords.RouteKinds, IsNeeded = true },
        new("note", "Note", ""),
        new("inside", "Clear inside", "Across the conductors, such as 25 x 40 mm."),
        new("on", "On", "The surface that it lies on or starts from.") { Choices = RowChoices.Mounts },
        new("length", "Length through it", "Such as 800 mm. Where its line is drawn, leave it empty."),
        new("bend-radius", "Smallest bend", "Such as 38 mm."),
        new("method", "Method", "How conductors lie in it, IEC 60204-1 annex D.") { Words = FieldWords.Methods },
        new("partition", "Partition between mains and the rest", "") { Kind = RowValue.Flag },
        new("relief", "Held against pull", "") { Words = FieldWords.Reliefs },
        new("ambient", "Air in it", "Such as 45 degC."),
    ];

    /// <summary>The fields of a section's rows; none when its rows are not edited one by one.</summary>
    public static IReadOnlyList<RowField> Of(string section) => section switch
    {
        EditedThing.Head => Head,
        EditedThing.Parts => Parts,
        EditedThing.Conductors => Conductors,
        EditedThing.Routes => Routes,
        _ => [],
    };

    /// <summary>The section of an address, or null when none of that name is edited row by row.</summary>
    public static string? SectionOf(string word) => Of(word).Count > 0 ? word : null;
}
