using System.Diagnostics;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Files that no person would write: each ends in a sentence, soon, and never in a crash.</summary>
[Collection(nameof(AloneCollection))]
public sealed class HostileFileTests
{
    private const string Head = "format: proveout-machine 1\nmachine: {name: Big}\ntypes: {t: {name: T, letter: X, terminals: {A: {role: passive}, B: {role: passive}}}}\n";

    public static TheoryData<string, string> Deep => new()
    {
        { "brackets", new string('[', 100_000) },
        { "brackets on lines of their own", Repeat("[\n", 100_000) },
        { "braces", new string('{', 100_000) },
        { "braces with keys", Repeat("{a: ", 100_000) },
        { "dashes", Repeat("- ", 100_000) },
        { "question marks", Repeat("? ", 100_000) },
        { "growing indentation", string.Concat(Enumerable.Range(0, 2_000).Select(depth => new string(' ', depth) + "a:\n")) },
    };

    [Theory]
    [InlineData("machine: {name: \"a\u202Eb\"}", "U+202E")]
    [InlineData("machine: {name: \"a\\u2066b\"}", "U+2066")]
    [InlineData("machine: {name: \"a\\e[2Jb\"}", "U+001B")]
    [InlineData("machine: {name: A, \"su\\u202Dmmary\": B}", "U+202D")]
    public void A_mark_that_is_not_seen_and_turns_what_follows_is_refused_with_its_number_and_not_shown(string text, string number)
    {
        var found = Assert.Single(ReadSoon($"format: proveout-machine 1\n{text}").Diagnostics, diagnostic => diagnostic.Rule == "unseen-mark");

        Assert.Contains(number, found.Message, StringComparison.Ordinal);
        Assert.Null(UnseenMarks.FirstIn(found.ToString()));
    }

    [Fact]
    public void Letters_written_from_right_to_left_need_no_such_mark() =>
        Assert.DoesNotContain(ReadSoon("format: proveout-machine 1\nmachine: {name: \u05DE\u05DB\u05D5\u05E0\u05D4}").Diagnostics, diagnostic => diagnostic.Rule == "unseen-mark");

    [Theory]
    [MemberData(nameof(Deep))]
    public void Deep_nesting_is_refused_at_once(string what, string text) =>
        Assert.Equal((what, "too-deep"), (what, Assert.Single(ReadSoon(text).Diagnostics).Rule));

    [Theory]
    [InlineData("a: &a [x, x]\nb: [*a, *a]", "alias", "m.yaml:1:4", "`&a`")]
    [InlineData("a: *b", "alias", "m.yaml:1:4", "`*b`")]
    [InlineData("a: !!binary x", "tag", "m.yaml:1:4", "binary")]
    [InlineData("a: 1\n---\nb: 2", "second-document", "m.yaml:2:1", "second")]
    [InlineData("a: [1, 2", "yaml-syntax", "m.yaml:2:1", "end of the file")]
    [InlineData("a:\n\t- b", "yaml-syntax", "m.yaml:2:1", "tab")]
    [InlineData("a: {b: 1\nc: 2\n", "yaml-syntax", "m.yaml:1:6", "not closed")]
    [InlineData("a: 1\nb\nc: 2", "yaml-syntax", "m.yaml:2:1", "`b`")]
    [InlineData("a: b: c", "yaml-syntax", "m.yaml:1:5", "`a: b: c`")]
    [InlineData("\"open", "yaml-syntax", "m.yaml:1:1", "`\"open`")]
    [InlineData("? [a]\n: b", "wrong-type", "m.yaml:1:3", "key")]
    [InlineData("", "empty-file", "m.yaml", "empty")]
    [InlineData("# only a remark\n", "empty-file", "m.yaml", "empty")]
    [InlineData("just text", "wrong-type", "m.yaml:1:1", "`just text`")]
    public void What_no_machine_file_needs_is_refused_with_its_place(string text, string rule, string place, string message)
    {
        var diagnostic = Assert.Single(ReadSoon(text).Diagnostics);

        Assert.Equal((rule, place), (diagnostic.Rule, diagnostic.Place.ToString()));
        Assert.Contains(message, diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_valid_file_is_read() => Assert.Equal(50_000, ReadSoon(Large("A")).Value!.Conductors.Count);

    [Fact]
    public void A_large_file_that_is_wrong_everywhere_is_refused_with_the_first_problems()
    {
        var diagnostics = ReadSoon(Large("Q")).Diagnostics;

        Assert.Equal(Problems.MostShown + 1, diagnostics.Count);
        Assert.Contains("49900", diagnostics[^1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30_000)]
    public void A_type_with_very_many_members_is_checked_in_time_that_grows_with_their_number(int count)
    {
        var terminals = string.Join(", ", Enumerable.Range(0, count).Select(number => $"T{number}: {{role: line}}"));
        var connectors = string.Join(", ", Enumerable.Range(0, count).Select(number => $"C{number}: {{terminals: [T{number}], family: f}}"));

        Assert.Empty(ReadSoon($"format: proveout-machine 1\nmachine: {{name: A}}\ntypes: {{t: {{name: T, letter: X, terminals: {{{terminals}}}, connectors: {{{connectors}}}}}}}").Diagnostics);
    }

    [Fact]
    public void A_very_long_word_is_not_compared_with_every_key() =>
        Assert.Equal(["missing-key", "unknown-key"], ReadSoon(Head.Replace("name: Big", "\"" + new string('n', 1000) + "\": Big", StringComparison.Ordinal)).Diagnostics.Select(d => d.Rule));

    [Fact]
    public void Text_made_of_signs_at_random_is_refused_and_never_crashes() =>
        Prop.ForAll<int>(seed =>
        {
            const string signs = "[]{}:,-?&*!|>'\"%@`#\n\t \\ab1~\u0085\u2028é\0<=.\uFEFF\uD800";
            var text = new string(new Random(seed).GetItems<char>(signs, 1 + (Math.Abs(seed % 997) % 80)));
            return MachineReader.Read([new("m.yaml", text)], Sample.Catalogue).Value is null;
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(5_000).WithEndSize(1_000_000));

    [Fact]
    public void A_sample_spoilt_at_random_is_read_or_refused_and_never_crashes() =>
        Prop.ForAll<int>(seed =>
        {
            var random = new Random(seed);
            var text = Sample.MachineText.ToCharArray();
            for (var slips = random.Next(1, 6); slips > 0; slips--)
                text[random.Next(text.Length)] = random.GetItems<char>("[]{}:,-?&*!|>'\"%@#\n\t ab1\0.", 1)[0];
            var read = Sample.Read(new string(text));
            return read.Value is null == read.Diagnostics.Count > 0;
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(2_000).WithEndSize(1_000_000));

    // The promise is two seconds for optimised code; processor time of a debug build is what a busy machine can be held to.
    private static Outcome<MachineDesign> ReadSoon(string text)
    {
        var allocated = GC.GetAllocatedBytesForCurrentThread();
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        var read = MachineReader.Read([new("m.yaml", text)], Sample.Catalogue);
        Assert.InRange(Process.GetCurrentProcess().TotalProcessorTime - before, TimeSpan.Zero, TimeSpan.FromSeconds(5));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - allocated, 0, 10_000_000 + (200L * text.Length));
        return read;
    }

    private static string Large(string terminal)
    {
        var text = new StringBuilder(Head + "parts:\n");
        for (var number = 0; number < 50_000; number++)
            text.Append($"  X{number}: {{type: t, name: Part}}\n");
        text.Append("conductors:\n");
        for (var number = 0; number < 50_000; number++)
            text.Append($"  W{number}: {{from: X{number}.{terminal}, to: X{(number + 1) % 50_000}.B, section: 1 mm2, colour: red, length: 1 m}}\n");
        return text.ToString();
    }

    private static string Repeat(string text, int count) => string.Concat(Enumerable.Repeat(text, count));
}
