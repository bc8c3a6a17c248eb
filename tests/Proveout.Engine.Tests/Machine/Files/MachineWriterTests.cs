using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class MachineWriterTests
{
    [Fact]
    public void What_is_written_reads_as_an_equal_machine() =>
        Prop.ForAll<int>(seed =>
        {
            var design = new RandomMachine(seed).Design();
            var read = MachineReader.Read([new("written.yaml", MachineWriter.Write(design))], new([]));
            return IsEqual(design, read);
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(500));

    [Fact]
    public void Types_that_the_catalogue_holds_need_not_be_written() =>
        Prop.ForAll<int>(seed =>
        {
            var random = new RandomMachine(seed);
            var design = random.Design();
            var catalogue = random.SomeOf(design);
            var text = MachineWriter.Write(design, catalogue);
            return IsEqual(design, MachineReader.Read([new("written.yaml", text)], catalogue))
                && catalogue.Types.All(type => !text.Contains($"\n  {type.Id}:", StringComparison.Ordinal));
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(200));

    [Fact]
    public void Writing_what_was_read_from_the_sample_changes_nothing()
    {
        var design = Sample.Read(Sample.MachineText).Value!;

        var read = MachineReader.Read([new("written.yaml", MachineWriter.Write(design, Sample.Catalogue))], Sample.Catalogue);

        Assert.Equal(design, read.Value);
    }

    [Fact]
    public void Short_things_stand_on_one_line_in_the_units_people_use()
    {
        var text = MachineWriter.Write(Sample.Read(Sample.MachineText).Value!, Sample.Catalogue);

        Assert.Contains("\n  W2: {from: X1.N, to: E1.B, section: AWG 18, colour: blue, length: 400 mm}\n", text, StringComparison.Ordinal);
        Assert.Contains("values: {element: 105.8 ohm +-7 %}", text, StringComparison.Ordinal);
        Assert.DoesNotContain("inlet:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_types_of_one_identifier_are_a_broken_promise()
    {
        var design = Sample.Read(Sample.MachineText).Value!;
        var part = design.Parts[0];
        var other = part with { Designation = "X9", Type = part.Type with { Name = "Other" } };

        Assert.Throws<ArgumentException>(() => MachineWriter.Write(design with { Parts = [part, other] }));
    }

    private static bool IsEqual(MachineDesign design, Outcome<MachineDesign> read)
    {
        Assert.Empty(read.Diagnostics);
        Assert.Equal(MachineWriter.Write(design), MachineWriter.Write(read.Value!));
        Assert.Equal(design, read.Value);
        return true;
    }
}
