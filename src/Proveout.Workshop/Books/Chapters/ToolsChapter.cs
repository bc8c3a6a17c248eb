using Proveout.Engine.Electrical;
using Proveout.Publish.Books;

namespace Proveout.Workshop;

/// <summary>What has to lie ready before work begins, as far as the machine says it.</summary>
internal sealed class ToolsChapter : IBookChapters
{
    public IEnumerable<BookChapter> Of(BookCase book)
    {
        var schedules = ScheduleBooks.Of(book.Planned, ScheduleBooks.UsualReel, "").Schedules.ToDictionary(schedule => schedule.Id, StringComparer.Ordinal);
        var modes = book.Planned.Plan.Checks.Select(check => MeterMode.OfKind(book.Planned.Dictionary.Checks[check].Kind)).Distinct().ToArray();
        return
        [
            new(
                "tools",
                "Tools and instruments",
                "What to have at hand; it follows from the ends, screws and checks of this machine.",
                [
                    new BookHeading("To measure with"),
                    new BookCautions([.. modes.Select(mode => mode.Caution).Where(caution => caution.Length > 0).Distinct()]),
                    new BookList(
                    [
                        .. modes.Select(mode => $"For checks of the dead machine: {mode.Setting}"),
                        "A voltage tester for proving dead, tried on a known source before and after (common practice).",
                        .. book.Design.Heated.Count > 0 ? ["A thermometer for plate and nozzle that does not hang on the machine."] : Array.Empty<string>(),
                        .. book.Design.Motion.Belts.Count > 0 ? ["A rule or calliper, and a recorder of sound for the tension of the belts."] : Array.Empty<string>(),
                    ]),
                    new BookHeading("To make ends with"),
                    new BookList([.. schedules["terminations"].Rows.Select(row => row[2].Length > 0 ? $"{row[0]}: {row[1]}, stripped {row[2]}" : $"{row[0]}: {row[1]}")]),
                    new BookText("For each a crimping tool made for it, cutters, and a stripper that does not nick strands (common practice)."),
                    new BookHeading("To tighten with"),
                    new BookList([.. schedules["torque-list"].Rows.Select(row => row[3]).Distinct().Select(torque => $"A torque screwdriver that reaches {torque}")]),
                ]),
        ];
    }
}
