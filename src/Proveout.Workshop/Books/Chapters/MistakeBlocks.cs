using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>Checks with the mistakes that they show, as pieces of a chapter.</summary>
internal static class MistakeBlocks
{
    /// <summary>State by state: cautions, how to get there, what to check; then the mistakes.</summary>
    public static IEnumerable<BookBlock> Of(MistakeTable table, string mistakes)
    {
        foreach (var setUp in table.SetUps)
        {
            ExpectedCheck[] checks = [.. table.Checks.Where(check => check.Check.SetUp == setUp.Id)];
            if (checks.Length == 0)
                continue;
            yield return new BookCautions(setUp.Cautions);
            yield return new BookList(setUp.Instructions);
            yield return new BookTable(
                setUp.Title,
                [new("Check", 2), new("Do", 3.4), new("Good", 1.6)],
                [.. checks.Select(check => new[] { check.Check.Title, check.Check.Instruction, check.Expected })]);
        }

        var titles = table.Checks.ToDictionary(check => check.Check.Id, check => check.Check.Title, StringComparer.Ordinal);
        yield return new BookTable(
            mistakes,
            [new("Mistake", 3), new("What follows", 3), new("Surely shown by", 2)],
            [.. table.Mistakes.Select(row => new[] { row.Fault.Sentence, row.Fault.Consequence, row.CaughtBy.Count == 0 ? "no check here" : string.Join("; ", row.CaughtBy.Take(2).Select(check => titles.GetValueOrDefault(check, check))) })]);
    }
}
