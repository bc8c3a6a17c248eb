using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Proveout.Engine.Machine;

/// <summary>
/// Builds the tree of one YAML file from the parser's events, and refuses what no machine file needs before it can do harm.
/// </summary>
internal sealed class NodeReader
{
    // The format itself nests 6 deep. Recursion and memory stay small below this.
    private const int DeepestNesting = 32;

    private const char ByteOrderMark = '\uFEFF';

    private readonly SourceText _source;
    private readonly Parser _parser;
    private readonly Problems _problems;
    private readonly int _skipped;

    private NodeReader(SourceText source, Problems problems)
    {
        (_source, _problems) = (source, problems);
        _skipped = source.Text.StartsWith(ByteOrderMark) ? 1 : 0;
        _parser = new Parser(new Scanner(new StringReader(source.Text[_skipped..]), skipComments: true));
    }

    /// <summary>The file's tree, or null when there is a problem that hides the rest of the file.</summary>
    public static Node? Read(SourceText source, Problems problems)
    {
        problems.BeginFile(source.File);
        if (source.Text.Length > SourceText.LargestFile)
        {
            problems.Add(
                "file-too-large",
                new(source.File, 0, 0),
                "The file is too large.",
                "Is it the right file? If so, split it into a folder of several.");
            return null;
        }

        var reader = new NodeReader(source, problems);
        try
        {
            return reader.ReadDocument();
        }
        catch (UnusableYamlException unusable)
        {
            problems.Add(unusable.Rule, unusable.Place, unusable.Message, unusable.Mend);
        }
        catch (YamlException syntax)
        {
            SyntaxProblem.Report(source, syntax, problems);
        }

        return null;
    }

    private Node? ReadDocument()
    {
        Expect<StreamStart>();
        if (_parser.Current is StreamEnd)
        {
            _problems.Add(
                "empty-file",
                new(_source.File, 0, 0),
                "The file is empty.",
                "Begin it with its format, such as `format: proveout-machine 1`.");
            return null;
        }

        Expect<DocumentStart>();
        var root = ReadNode(0);
        Expect<DocumentEnd>();
        if (_parser.Current is DocumentStart second)
            throw Unusable(second, "second-document", "A second YAML document begins here.", "Put it into a file of its own.");
        return root;
    }

    private Node ReadNode(int depth)
    {
        var current = _parser.Current;
        if (current is AnchorAlias alias)
            throw Unusable(
                current,
                "alias",
                $"{Quote.Of("*" + alias.Value)} is an alias.",
                "Write out what it stands for; machine files have no aliases.");
        if (current is NodeEvent { Anchor.IsEmpty: false } anchored)
            throw Unusable(
                current,
                "alias",
                $"{Quote.Of("&" + anchored.Anchor)} is an anchor.",
                "Leave it out; machine files have no aliases.");
        if (current is NodeEvent { Tag: { IsEmpty: false, IsNonSpecific: false } } tagged)
            throw Unusable(current, "tag", $"{Quote.Of(tagged.Tag.Value)} is a YAML tag.", "Leave it out; machine files have no tags.");
        if (depth > DeepestNesting)
            throw Unusable(
                current!,
                "too-deep",
                $"The file nests more than {DeepestNesting} levels deep here.",
                "Look for brackets that are not closed, or indentation that grows.");
        return current switch
        {
            MappingStart => ReadMapping(depth),
            SequenceStart => ReadList(depth),
            _ => ReadScalar(),
        };
    }

    private ScalarNode ReadScalar()
    {
        var scalar = Expect<Scalar>();
        if (UnseenMarks.FirstIn(scalar.Value) is { } mark)
            _problems.Add(
                "unseen-mark",
                PlaceOf(scalar.Start),
                FormattableString.Invariant($"{Quote.Of(scalar.Value)} holds the character U+{(int)mark:X4}, which is not seen and changes how the rest is shown."),
                "Take it out: names and words are read in the order in which they are written.");
        return new(PlaceOf(scalar.Start), scalar.Value, scalar.Style is ScalarStyle.Plain) { Span = SpanOf(scalar.Start, scalar.End) };
    }

    private ListNode ReadList(int depth)
    {
        var start = Expect<SequenceStart>();
        var items = new List<Node>();
        while (_parser.Current is not SequenceEnd)
            items.Add(ReadNode(depth + 1));
        var end = Expect<SequenceEnd>();
        return new(PlaceOf(start.Start), items) { Span = BracketsOf(start.Start, end.End), InBrackets = start.Style is SequenceStyle.Flow };
    }

    private MappingNode ReadMapping(int depth)
    {
        var start = Expect<MappingStart>();
        var entries = new List<Node>();
        while (_parser.Current is not MappingEnd)
        {
            var keyEvent = _parser.Current!;
            if (ReadNode(depth + 1) is not ScalarNode key)
                throw Unusable(
                    keyEvent,
                    "wrong-type",
                    "A key must be one piece of text.",
                    "Put quotes around it if it begins with a bracket or brace.");
            var value = ReadNode(depth + 1);
            value.Key = key;
            entries.Add(value);
        }

        var end = Expect<MappingEnd>();
        return new(PlaceOf(start.Start), entries) { Span = BracketsOf(start.Start, end.End), InBraces = start.Style is MappingStyle.Flow };
    }

    private T Expect<T>()
        where T : ParsingEvent
    {
        // Before the first event there is no current one.
        if (_parser.Current is null)
            MoveNext();
        if (_parser.Current is not T current)
            throw Unusable(_parser.Current!, SyntaxProblem.Rule, "This is not valid YAML: something is missing here.", SyntaxProblem.Mend);
        MoveNext();
        return current;
    }

    private void MoveNext()
    {
        var before = _parser.Current?.End ?? Mark.Empty;
        try
        {
            _parser.MoveNext();
        }
        catch (Exception inner) when (inner is InvalidOperationException or ArgumentException or FormatException or OverflowException)
        {
            // The scanner meets some malformed text with these instead of a syntax error.
            throw new YamlException(before, before, "A bracket, brace or quote is not closed near this place", inner);
        }
    }

    private SourcePlace PlaceOf(Mark mark) => new(_source.File, (int)mark.Line, (int)mark.Column);

    // What ends without a bracket or quote ends, for the parser, where the next thing begins: the blanks between are not its own.
    private TextSpan SpanOf(Mark start, Mark end)
    {
        var (from, to) = ((int)start.Index + _skipped, Math.Min((int)end.Index + _skipped, _source.Text.Length));
        while (to > from && char.IsWhiteSpace(_source.Text[to - 1]))
            to--;
        return new(from, to);
    }

    // The parser marks a closing bracket by where it stands, not by where it ends.
    private TextSpan BracketsOf(Mark start, Mark end)
    {
        var to = (int)end.Index + _skipped;
        return to < _source.Text.Length && _source.Text[(int)start.Index + _skipped] is '{' or '[' && (_source.Text[to] is '}' or ']')
            ? new((int)start.Index + _skipped, to + 1)
            : SpanOf(start, end);
    }

    private UnusableYamlException Unusable(ParsingEvent at, string rule, string message, string mend) => new(
        rule,
        PlaceOf(at.Start),
        message,
        mend);

    /// <summary>Leaves the recursion when the rest of a file cannot be used; never leaves this class.</summary>
    private sealed class UnusableYamlException(string rule, SourcePlace place, string message, string mend) : Exception(message)
    {
        public string Rule => rule;

        public SourcePlace Place => place;

        public string Mend => mend;
    }
}
