using Proveout.Publish.Drawings;
using Proveout.Publish.Schedules;

namespace Proveout.Publish.Books;

/// <summary>A piece of a chapter: a closed family, meant to be matched on.</summary>
public abstract record BookBlock
{
    private protected BookBlock()
    {
    }

    /// <summary>Everything it says, as text.</summary>
    public IEnumerable<string> Words => this switch
    {
        BookHeading heading => [heading.Text],
        BookText text => [text.Text],
        BookCautions cautions => cautions.Cautions,
        BookList list => list.Items,
        BookTable table => [table.Caption, .. table.Columns.Select(column => column.Heading), .. table.Rows.SelectMany(row => row)],
        BookDrawing drawing => [drawing.Sheet.Title, drawing.Description],
        BookPhotograph photograph => [photograph.Caption],
        BookCommand command => [command.Text],
        BookDownloads downloads => downloads.Names,
        _ => [],
    };
}

/// <summary>Heading of what follows; the index and the search lead to it.</summary>
/// <param name="Text">The heading.</param>
public sealed record BookHeading(string Text) : BookBlock;

/// <summary>A paragraph.</summary>
/// <param name="Text">Its text.</param>
public sealed record BookText(string Text) : BookBlock;

/// <summary>What can hurt; stands before the step.</summary>
/// <param name="Cautions">A sentence each; nothing is shown when there is none.</param>
public sealed record BookCautions(IReadOnlyList<string> Cautions) : BookBlock;

/// <summary>A list.</summary>
/// <param name="Items">Its items; nothing is shown when there is none.</param>
public sealed record BookList(IReadOnlyList<string> Items) : BookBlock
{
    /// <summary>True when the items are to be done one after the other.</summary>
    public bool IsNumbered { get; init; }
}

/// <summary>A table.</summary>
/// <param name="Caption">Its caption.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, a text for each column.</param>
public sealed record BookTable(string Caption, IReadOnlyList<ScheduleColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : BookBlock
{
    /// <summary>Columns whose words name the rows in the index; none when the rows do not belong there.</summary>
    public IReadOnlyList<int> IndexedColumns { get; init; } = [];
}

/// <summary>A drawing.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Description">The same in a few words, for those who do not see it.</param>
public sealed record BookDrawing(DrawingSheet Sheet, string Description) : BookBlock;

/// <summary>A photograph.</summary>
/// <param name="Name">Name of its file, without what stands behind the point; unique in the book.</param>
/// <param name="Picture">The photograph, made ready.</param>
/// <param name="Caption">What it shows.</param>
public sealed record BookPhotograph(string Name, PublishedPhotograph Picture, string Caption) : BookBlock;

/// <summary>Something to type as it stands.</summary>
/// <param name="Text">The command.</param>
public sealed record BookCommand(string Text) : BookBlock;

/// <summary>Files of the book to take away.</summary>
/// <param name="Names">Their places in the folder of the book.</param>
public sealed record BookDownloads(IReadOnlyList<string> Names) : BookBlock;
