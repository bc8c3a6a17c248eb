namespace Proveout.Workshop;

/// <summary>One page of a long list.</summary>
/// <param name="Items">What stands on it.</param>
/// <param name="Count">How many there are on all pages.</param>
/// <param name="Page">Which page, from 1.</param>
/// <param name="Pages">How many pages, at least 1.</param>
public sealed record Paged<T>(IReadOnlyList<T> Items, int Count, int Page, int Pages)
{
    /// <summary>A page of what was found; a page beyond the last is the last.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="page">Which page is wanted.</param>
    /// <param name="size">How many stand on a page.</param>
    internal static Paged<T> Of(IReadOnlyList<T> found, int page, int size)
    {
        var pages = Math.Max(1, (found.Count + size - 1) / size);
        var shown = Math.Clamp(page, 1, pages);
        return new([.. found.Skip((shown - 1) * size).Take(size)], found.Count, shown, pages);
    }

    /// <summary>The same page with each item put in another form.</summary>
    internal Paged<TOther> Select<TOther>(Func<T, TOther> form) => new([.. Items.Select(form)], Count, Page, Pages);
}
