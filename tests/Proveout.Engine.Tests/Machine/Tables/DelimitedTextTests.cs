using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine.Tables;

public sealed class DelimitedTextTests
{
    private static DataTable Read(string text) => DelimitedText.Read(text, "map.csv").Value!;

    private static Diagnostic Problem(string text) => DelimitedText.Read(text, "map.csv").Diagnostics[0];

    [Theory]
    [InlineData("x,y,z\n1.5,2,3\n")]
    [InlineData("x;y;z\n1,5;2;3\n")]
    [InlineData("x\ty\tz\r\n1,5\t2\t3\r\n")]
    [InlineData("x y z\n1.5 2 3\n")]
    [InlineData("\uFEFFz;y;x\n3;2;1.5\n")]
    [InlineData("# probed at noon\n\nx, y, z\n \"1.5\", \"2\", 3\n")]
    [InlineData("x,y,z\n\"1,5\",2,3\n")]
    [InlineData("X [mm]; Y (mm); Z / mm\n1,5;2;3")]
    [InlineData("x_um;y_mm;z mm\n1500;2;3")]
    [InlineData("x [m]; y; z [µm]\n0,0015; 2; 3000")]
    public void The_same_numbers_come_out_of_every_dialect(string text)
    {
        List<Diagnostic> problems = [];
        var table = Read(text);

        Assert.Equal(1.5, table.Wanted("mm", problems, "x")![0], 12);
        Assert.Equal(2, table.Wanted("mm", problems, "y")![0], 12);
        Assert.Equal(3, table.Wanted("mm", problems, "height", "z")![0], 12);
        Assert.Empty(problems);
    }

    [Fact]
    public void Temperatures_are_converted_with_their_zero()
    {
        List<Diagnostic> problems = [];

        Assert.Equal(100, Read("t [degF];z\n212;1").Wanted("degC", problems, "t")![0], 9);
        Assert.Equal(26.85, Read("t [K];z\n300;1").Wanted("degC", problems, "t")![0], 9);
    }

    [Fact]
    public void A_heading_of_thousands_of_marks_is_taken_whole_without_searching_it_for_a_unit()
    {
        // Found by fuzzing: the search takes a power of the length, and gave up with an exception after a second.
        var heading = string.Concat(Enumerable.Repeat("? ", 20_000)) + "x";

        Assert.Equal(heading, Read($"\"{heading}\";y\n1;2\n").Columns[0].Name);
    }

    [Fact]
    public void An_empty_cell_is_no_number_and_no_fault()
    {
        var table = Read("x;y\n1;\n-;2\nn/a;3\n");

        Assert.Equal([1, double.NaN, double.NaN], table.Columns[0].Values);
        Assert.Equal([2, 3, 4], table.Lines);
    }

    [Theory]
    [InlineData("", "empty-table", 0, 0)]
    [InlineData("# nothing\n", "empty-table", 0, 0)]
    [InlineData("x;y\n", "no-rows", 1, 1)]
    [InlineData("1;2\n3;4\n", "no-headings", 1, 1)]
    [InlineData("x;x\n1;2\n", "heading-twice", 1, 3)]
    [InlineData("x;y\n1;two\n", "not-a-number", 2, 3)]
    [InlineData("x;y\n1;1.234,5\n", "not-a-number", 2, 3)]
    [InlineData("x;y\n1;2 mm\n", "not-a-number", 2, 3)]
    [InlineData("x;y\n1,5;2\n1.5;2\n", "point-and-comma", 3, 1)]
    [InlineData("x;y\n1;2;3\n", "wrong-number-of-cells", 2, 1)]
    [InlineData("x;y\n1;\"2\n", "open-quotation", 2, 3)]
    public void What_is_wrong_is_said_with_its_place(string text, string rule, int line, int column)
    {
        var problem = Problem(text);

        Assert.Equal((rule, line, column), (problem.Rule, problem.Place.Line, problem.Place.Column));
        Assert.NotEmpty(problem.Mend);
    }

    [Fact]
    public void Decimal_commas_between_commas_are_recognised_as_the_trouble()
    {
        Assert.Contains("save the file with semicolons", Problem("x,y\n1,5,2\n").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_is_not_there_or_of_another_kind_is_said()
    {
        List<Diagnostic> problems = [];
        var table = Read("x [s];y\n1;2\n");

        Assert.Null(table.Wanted("mm", problems, "x"));
        Assert.Null(table.Wanted("mm", problems, "height", "z"));
        Assert.Equal(["wrong-unit", "no-such-column"], problems.Select(problem => problem.Rule));
        Assert.Contains("`x`, `y`", problems[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_grid_needs_no_headings_and_takes_decimal_commas_between_blanks()
    {
        Assert.Equal([0.1, -0.2], DelimitedText.ReadGrid("0,1 -0,2\n0,3 0,4\n", "grid").Value![0]);
        Assert.Equal([1, 2, 3], DelimitedText.ReadGrid("1,2,3\n4,5,6", "grid").Value![0]);
        Assert.Equal("wrong-number-of-cells", DelimitedText.ReadGrid("1 2\n3\n", "grid").Diagnostics[0].Rule);
    }

    [Fact]
    public void Any_numbers_written_in_any_dialect_come_back()
    {
        var rows = ArbMap.Default.GeneratorFor<NormalFloat>().Select(number => number.Get).ArrayOf(3).NonEmptyListOf();
        var cases = from numbers in rows from separator in Gen.Elements(';', '\t') from comma in Gen.Elements(true, false) select (numbers, separator, comma);

        Check.QuickThrowOnFailure(Prop.ForAll(cases.ToArbitrary(), written =>
        {
            var lines = written.numbers.Select(row => string.Join(written.separator, row.Select(number => Text(number, written.comma))));
            var table = Read($"a{written.separator}b{written.separator}c\n{string.Join('\n', lines)}");
            return Enumerable.Range(0, 3).All(column => table.Columns[column].Values.SequenceEqual(written.numbers.Select(row => row[column])));
        }));
    }

    [Fact]
    public void A_line_of_a_million_headings_is_refused_before_they_are_held_against_each_other() =>
        Assert.Equal("too-many-columns", Assert.Single(DelimitedText.Read(string.Join(';', Enumerable.Range(0, 1_000_000).Select(number => $"c{number}")) + "\n1\n", "wide.csv").Diagnostics).Rule);

    private static string Text(double number, bool comma)
    {
        var text = number.ToString("R", CultureInfo.InvariantCulture);
        return comma ? text.Replace('.', ',') : text;
    }
}
