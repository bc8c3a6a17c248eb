using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>The sections of the report on paper, from top to bottom.</summary>
internal sealed class PdfSections(PdfSheet sheet, ReportModel report)
{
    private static readonly PdfColumn[] CheckColumns =
        [new("No.", 28), new("Check", 160), new("Expected", 84), new("Reading", 68), new("Verdict", 77), new("By", 88)];

    private static readonly PdfColumn[] CoverageColumns =
        [new("Kind of mistake", 295), new("Simulated", 70), new("Surely caught", 75), new("Share", 65)];

    private static readonly PdfColumn[] GapColumns =
        [new("Mistake", 195), new("Count", 45), new("What it does", 90), new("What else would show it", 175)];

    /// <summary>Writes all of them.</summary>
    public void Write()
    {
        WriteHead();
        WriteCautions();
        WriteChecks();
        WriteDeviations();
        WriteCoverage();
        WriteNotCovered();
        if (report.Pairs is { } pairs)
            WritePairs(pairs);
        WriteSignOffs();
        WriteFoot();
    }

    private void WriteHead()
    {
        sheet.Write("Record of checks", PdfStyle.Note);
        sheet.Write(report.Machine, PdfStyle.Title);
        sheet.Write(report.Summary, PdfStyle.Body);
        sheet.Space(8);
        WriteFact("Serial number", report.Serial);
        WriteFact("Builder", report.Builder);
        WriteFact("Build started", ReportWords.Of(report.Started));
        WriteFact("Report written", ReportWords.Of(report.Written));
        WriteFact("Instruments", string.Join("; ", report.Instruments));
        WriteFact("Checks", ReportWords.Tally(report));
        WriteFact("Machine file", report.Fingerprint);
    }

    private void WriteFact(string term, string value)
    {
        sheet.Need(PdfStyle.Body.LineHeight);
        sheet.DrawLine(new PdfRun(term, PdfStyle.Strong), PdfSheet.Left);
        sheet.Write(ReportWords.OrDash(value), PdfStyle.Body, indent: 105);
    }

    private void WriteCautions()
    {
        WriteHeading("Before anything else");
        foreach (var caution in report.Cautions)
            PdfCaution.Write(sheet, caution);
        sheet.Space(2);
        sheet.Write(ReportModel.NotASafetyStatement, PdfStyle.Strong);
    }

    private void WriteChecks()
    {
        WriteHeading("Checks");
        if (report.Rows.Count == 0)
            sheet.Write("No checks.", PdfStyle.Body);
        foreach (var (setUp, rows) in ReportWords.BySetUp(report))
            new PdfTable(sheet, setUp, CheckColumns).Write(rows.Select(CheckRow));
    }

    private static PdfCell[] CheckRow(ReportRow row) =>
    [
        PdfCell.Of(ReportWords.Of(row.Number)),
        PdfCell.Of(row.Title, PdfStyle.CellStrong, row.Between, row.Note),
        PdfCell.Of(row.Expectation),
        PdfCell.Of(ReportWords.OrDash(row.Reading)),
        PdfCell.Of(ReportWords.Of(row.Verdict), PdfStyle.CellStrong) with { Verdict = row.Verdict },
        PdfCell.Of(ReportWords.OrDash(row.Person), PdfStyle.Cell, row.When is { } when ? ReportWords.Of(when) : ""),
    ];

    private void WriteDeviations()
    {
        WriteHeading("Deviations, measurements and photographs");
        if (report.Deviations.Count == 0)
            sheet.Write("None noted.", PdfStyle.Body);
        foreach (var deviation in report.Deviations)
            new PdfDeviation(sheet, deviation).Write();
    }

    private void WriteCoverage()
    {
        WriteHeading("What the checks would have caught");
        new PdfTable(sheet, "Mistakes simulated, by kind", CoverageColumns).Write(report.Coverage.Select(kind => new[]
        {
            PdfCell.Of(kind.Kind, PdfStyle.CellStrong),
            PdfCell.Of(ReportWords.Of(kind.Faults)),
            PdfCell.Of(ReportWords.Of(kind.Caught)),
            PdfCell.Of(ReportWords.Share(kind.Caught, kind.Faults)),
        }));
    }

    private void WriteNotCovered()
    {
        WriteHeading("What these checks cannot tell");
        if (report.NotCovered.Count == 0)
            sheet.Write("Nothing among the mistakes simulated.", PdfStyle.Body);
        WriteGaps("Left to other evidence, worst first", report.NotCovered);
    }

    private void WritePairs(ReportPairs pairs)
    {
        WriteHeading("Two mistakes made together");
        sheet.Write($"With every check of the plan done: {pairs.Summary}", PdfStyle.Body);
        sheet.Space(6);
        if (pairs.Worst.Count > 0)
            WriteGaps("Hidden by each other, most dangerous first", pairs.Worst);
        if (pairs.More > 0)
            sheet.Write(ReportWords.MorePairs(pairs), PdfStyle.Body);
    }

    private void WriteGaps(string title, IEnumerable<ReportGap> gaps) => new PdfTable(sheet, title, GapColumns).Write(gaps.Select(gap => new[]
    {
        PdfCell.Of(gap.Sentence, PdfStyle.CellStrong),
        PdfCell.Of(ReportWords.Of(gap.Count)),
        PdfCell.Of(gap.Severity),
        PdfCell.Of(gap.OtherEvidence),
    }));

    private void WriteSignOffs()
    {
        sheet.Need(150);
        WriteHeading("Sign-off");
        foreach (var signOff in report.SignOffs)
        {
            sheet.Write(signOff.Statement, PdfStyle.Body);
            sheet.Write($"{signOff.Person}, {signOff.Role}, {ReportWords.Of(signOff.When)}", PdfStyle.Note);
            sheet.Space(4);
        }

        WriteLinesToSign("Builder", "Checker");
    }

    private void WriteLinesToSign(params ReadOnlySpan<string> roles)
    {
        sheet.Need(70);
        sheet.Y += 46;
        var width = (PdfSheet.Width - 30) / roles.Length;
        var (y, x) = (sheet.Y, PdfSheet.Left);
        foreach (var role in roles)
        {
            sheet.Graphics.DrawLine(new XPen(PdfStyle.Ink, 0.8), x, y, x + width, y);
            sheet.DrawLine(new PdfRun($"{role}: name, date, signature", PdfStyle.Note), x);
            x += width + 30;
        }

        sheet.Y = y + PdfStyle.Note.LineHeight;
    }

    private void WriteFoot()
    {
        WriteHeading("Journal");
        WriteFact("Entries", ReportWords.Of(report.EntryCount));
        WriteFact("Last hash", report.LastHash);
    }

    private void WriteHeading(string heading)
    {
        sheet.Need(80);
        sheet.Space(16);
        sheet.Bookmark(heading);
        sheet.Write(heading, PdfStyle.Heading);
        sheet.Y += 4;
    }
}
